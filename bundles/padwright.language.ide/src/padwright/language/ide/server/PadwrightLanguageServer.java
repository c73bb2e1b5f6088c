package padwright.language.ide.server;

import java.util.List;
import java.util.concurrent.CompletableFuture;

import org.eclipse.emf.common.util.URI;
import org.eclipse.lsp4j.Diagnostic;
import org.eclipse.lsp4j.DidChangeWatchedFilesParams;
import org.eclipse.lsp4j.FileEvent;
import org.eclipse.lsp4j.InitializeParams;
import org.eclipse.lsp4j.InitializeResult;
import org.eclipse.lsp4j.ServerCapabilities;
import org.eclipse.lsp4j.ServerInfo;
import org.eclipse.xtext.ide.server.LanguageServerImpl;
import org.eclipse.xtext.validation.Issue;

import com.google.inject.Inject;
import com.google.inject.Singleton;

import padwright.language.shop.ShopFolder;

/** The common server with what it lacks, and what differs for shops of flute plans. */
@Singleton
final class PadwrightLanguageServer extends LanguageServerImpl {

	private static final String NAME = "Padwright";

	@Inject
	private ShopWorkspaceManager shops;

	@Override
	public CompletableFuture<InitializeResult> initialize(InitializeParams params) {
		return super.initialize(params).thenApply(result -> {
			result.setServerInfo(new ServerInfo(NAME));
			return result;
		});
	}

	@Override
	protected ServerCapabilities createServerCapabilities(InitializeParams params) {
		ServerCapabilities capabilities = super.createServerCapabilities(params);
		capabilities.setSignatureHelpProvider(null);
		return capabilities;
	}

	@Override
	protected Diagnostic toDiagnostic(Issue issue) {
		Diagnostic diagnostic = super.toDiagnostic(issue);
		diagnostic.setSource(NAME);
		return diagnostic;
	}

	@Override
	public void didChangeWatchedFiles(DidChangeWatchedFilesParams params) {
		if (params.getChanges().stream().anyMatch(change -> isMarker(change.getUri()))) {
			getRequestManager().runWrite(() -> {
				shops.findShopsAnew();
				return null;
			}, (cancelled, done) -> null);
		}
		List<FileEvent> documents = params.getChanges().stream().filter(change -> isDocument(change.getUri()))
				.toList();
		super.didChangeWatchedFiles(new DidChangeWatchedFilesParams(documents));
	}

	private static boolean isMarker(String uri) {
		return uri.endsWith("/" + ShopFolder.MARKER);
	}

	private boolean isDocument(String uri) {
		return getResourceServiceProvider(URI.createURI(uri)) != null;
	}
}
