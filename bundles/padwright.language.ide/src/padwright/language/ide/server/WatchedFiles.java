package padwright.language.ide.server;

import java.util.List;

import org.eclipse.lsp4j.DidChangeWatchedFilesRegistrationOptions;
import org.eclipse.lsp4j.FileSystemWatcher;
import org.eclipse.lsp4j.Registration;
import org.eclipse.lsp4j.RegistrationParams;
import org.eclipse.lsp4j.jsonrpc.messages.Either;
import org.eclipse.lsp4j.services.LanguageClient;

import padwright.language.shop.ShopFolder;

/** The files whose changes outside the editor matter; many editors tell of none unless they are asked. */
final class WatchedFiles {

	private static final String METHOD = "workspace/didChangeWatchedFiles";
	private static final List<String> PATTERNS = List.of("**/*.{keys,stock,plan}", "**/" + ShopFolder.MARKER);

	private WatchedFiles() {
	}

	static void ask(LanguageClient client) {
		List<FileSystemWatcher> watchers =
				PATTERNS.stream().map(pattern -> new FileSystemWatcher(Either.forLeft(pattern))).toList();
		client.registerCapability(new RegistrationParams(List.of(
				new Registration("padwright-files", METHOD, new DidChangeWatchedFilesRegistrationOptions(watchers)))));
	}
}
