package padwright.workbench.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;

import org.eclipse.core.runtime.CoreException;
import org.junit.jupiter.api.Test;

class LanguageSessionTest {

	/** Else whoever waits, such as a wizard, would wait for ever. */
	@Test
	void whoWaitsIsToldThatTheStartFailed() {
		CompletableFuture<String> server = new CompletableFuture<>();
		IllegalStateException why = new IllegalStateException("no memory");
		assertThrows(CoreException.class, () -> LanguageSession.completeWith(server, () -> {
			throw why;
		}));
		assertEquals(why, assertThrows(ExecutionException.class, server::get).getCause());
	}

	@Test
	void whoWaitsIsGivenWhatStarted() throws Exception {
		CompletableFuture<String> server = new CompletableFuture<>();
		LanguageSession.completeWith(server, () -> "running");
		assertEquals("running", server.get());
	}
}
