package padwright.workbench.session;

import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.BiFunction;
import java.util.function.Supplier;

import org.eclipse.jface.text.IDocument;
import org.eclipse.lsp4j.TextDocumentIdentifier;

import padwright.language.ide.server.LocalServer;

/**
 * Asks the server. A question that a change of a text cancelled is asked again; a late or failed answer is taken for none:
 * the next change brings a new one.
 */
public final class Answers {

	private static final long PATIENCE_NANOSECONDS = TimeUnit.SECONDS.toNanos(3);
	private static final int TRIES = 5;

	private Answers() {
	}

	/** What the server says of a document; nothing if it does not run yet, or the text is no document. */
	public static <T> Optional<T> of(IDocument document,
			BiFunction<LocalServer, TextDocumentIdentifier, CompletableFuture<? extends T>> question) {
		return LanguageSession.get().running().flatMap(server -> Documents.identifier(document)
				.flatMap(text -> await(() -> question.apply(server, text))));
	}

	/** As {@link #of}, but comes when it comes: for what nobody waits for, such as figures of a plan that is just read. */
	public static <T> CompletableFuture<Optional<T>> later(IDocument document,
			BiFunction<LocalServer, TextDocumentIdentifier, CompletableFuture<T>> question) {
		return LanguageSession.get().running().flatMap(server -> Documents.identifier(document)
				.map(text -> retried(() -> question.apply(server, text))))
				.map(answer -> answer.thenApply(Optional::ofNullable).exceptionally(failed -> Optional.empty()))
				.orElse(CompletableFuture.completedFuture(Optional.empty()));
	}

	/** Asks again where a change of the text cancelled the question, up to five times in all; the last failure stands. */
	public static <T> CompletableFuture<T> retried(Supplier<CompletableFuture<T>> question) {
		return retried(question, TRIES);
	}

	private static <T> CompletableFuture<T> retried(Supplier<CompletableFuture<T>> question, int tries) {
		CompletableFuture<T> answer = question.get();
		return tries == 1 ? answer : answer.exceptionallyCompose(cancelled -> retried(question, tries - 1));
	}

	/** Waits a while for an answer, and asks again as {@link #retried} does. */
	public static <T> Optional<T> await(Supplier<? extends CompletableFuture<? extends T>> question) {
		long end = System.nanoTime() + PATIENCE_NANOSECONDS;
		for (int tries = TRIES; tries > 0; tries--) {
			CompletableFuture<? extends T> answer = question.get();
			try {
				return Optional.ofNullable(answer.get(end - System.nanoTime(), TimeUnit.NANOSECONDS));
			} catch (InterruptedException interrupted) {
				Thread.currentThread().interrupt();
				return Optional.empty();
			} catch (TimeoutException late) {
				answer.cancel(true);
				return Optional.empty();
			} catch (CancellationException | ExecutionException cancelled) {
				// A change came between.
			}
		}
		return Optional.empty();
	}
}
