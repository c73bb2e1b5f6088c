package padwright.workbench.session;

import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.BiFunction;

import org.eclipse.jface.text.IDocument;
import org.eclipse.lsp4j.TextDocumentIdentifier;

import padwright.language.ide.server.LocalServer;

/** Asks the server, and takes a cancelled, late or failed answer for none: the next change brings a new one. */
public final class Answers {

	private static final int PATIENCE_MILLISECONDS = 3_000;

	private Answers() {
	}

	/** What the server says of a document; nothing if it does not run yet, or the text is no document. */
	public static <T> Optional<T> of(IDocument document,
			BiFunction<LocalServer, TextDocumentIdentifier, CompletableFuture<? extends T>> question) {
		return LanguageSession.get().running().flatMap(server -> Documents.identifier(document)
				.flatMap(text -> await(question.apply(server, text))));
	}

	/** Waits a while for an answer. */
	public static <T> Optional<T> await(CompletableFuture<? extends T> answer) {
		try {
			return Optional.ofNullable(answer.get(PATIENCE_MILLISECONDS, TimeUnit.MILLISECONDS));
		} catch (InterruptedException interrupted) {
			Thread.currentThread().interrupt();
			return Optional.empty();
		} catch (CancellationException | ExecutionException | TimeoutException none) {
			answer.cancel(true);
			return Optional.empty();
		}
	}
}
