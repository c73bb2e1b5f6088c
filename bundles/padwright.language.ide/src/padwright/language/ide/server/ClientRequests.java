package padwright.language.ide.server;

import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutorService;

import org.eclipse.lsp4j.jsonrpc.ResponseErrorException;
import org.eclipse.lsp4j.jsonrpc.messages.ResponseError;
import org.eclipse.lsp4j.jsonrpc.messages.ResponseErrorCode;
import org.eclipse.xtext.ide.server.concurrent.RequestManager;
import org.eclipse.xtext.service.OperationCanceledManager;
import org.eclipse.xtext.util.CancelIndicator;
import org.eclipse.xtext.xbase.lib.Functions.Function1;

import com.google.inject.Inject;
import com.google.inject.Singleton;

/**
 * Every change of a text cuts short what was asked before. A client that did not cancel it itself is told that the text
 * has changed, as the protocol has it: editors say nothing of that to their user, and ask again.
 */
@Singleton
final class ClientRequests extends RequestManager {

	@Inject
	ClientRequests(ExecutorService parallel, OperationCanceledManager cancellation) {
		super(parallel, cancellation);
	}

	@Override
	public synchronized <V> CompletableFuture<V> runRead(Function1<? super CancelIndicator, ? extends V> reading) {
		CompletableFuture<V> running = super.runRead(reading);
		CompletableFuture<V> answer = new Answer<>(running);
		running.whenComplete((value, failure) -> {
			if (failure == null) {
				answer.complete(value);
			} else {
				answer.completeExceptionally(running.isCancelled() ? outdated() : failure);
			}
		});
		return answer;
	}

	private static ResponseErrorException outdated() {
		return new ResponseErrorException(
				new ResponseError(ResponseErrorCode.ContentModified, "The text has changed meanwhile.", null));
	}

	/** Cancelled by its client, who knows of that. */
	private static final class Answer<V> extends CompletableFuture<V> {

		private final CompletableFuture<V> running;

		Answer(CompletableFuture<V> running) {
			this.running = running;
		}

		@Override
		public boolean cancel(boolean mayInterrupt) {
			boolean cancelled = super.cancel(mayInterrupt);
			running.cancel(mayInterrupt);
			return cancelled;
		}
	}
}
