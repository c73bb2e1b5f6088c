package padwright.language.ide.server;

import java.io.StringReader;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.CompletableFuture;

import org.eclipse.emf.common.util.URI;
import org.eclipse.lsp4j.CompletionItem;
import org.eclipse.lsp4j.CompletionList;
import org.eclipse.lsp4j.CompletionParams;
import org.eclipse.lsp4j.Diagnostic;
import org.eclipse.lsp4j.DidChangeConfigurationParams;
import org.eclipse.lsp4j.DidChangeWatchedFilesParams;
import org.eclipse.lsp4j.DidChangeWorkspaceFoldersParams;
import org.eclipse.lsp4j.DocumentOnTypeFormattingOptions;
import org.eclipse.lsp4j.DocumentOnTypeFormattingParams;
import org.eclipse.lsp4j.FileEvent;
import org.eclipse.lsp4j.InitializeParams;
import org.eclipse.lsp4j.InitializeResult;
import org.eclipse.lsp4j.InitializedParams;
import org.eclipse.lsp4j.InlayHint;
import org.eclipse.lsp4j.InlayHintParams;
import org.eclipse.lsp4j.PrepareRenameDefaultBehavior;
import org.eclipse.lsp4j.PrepareRenameParams;
import org.eclipse.lsp4j.PrepareRenameResult;
import org.eclipse.lsp4j.Range;
import org.eclipse.lsp4j.RenameParams;
import org.eclipse.lsp4j.ServerCapabilities;
import org.eclipse.lsp4j.ServerInfo;
import org.eclipse.lsp4j.TextEdit;
import org.eclipse.lsp4j.WorkDoneProgressCancelParams;
import org.eclipse.lsp4j.WorkspaceEdit;
import org.eclipse.lsp4j.jsonrpc.messages.Either;
import org.eclipse.lsp4j.jsonrpc.messages.Either3;
import org.eclipse.xtext.ide.server.ILanguageServerAccess;
import org.eclipse.xtext.ide.server.LanguageServerImpl;
import org.eclipse.xtext.ide.server.rename.IRenameService2;
import org.eclipse.xtext.parser.IParseResult;
import org.eclipse.xtext.parser.IParser;
import org.eclipse.xtext.util.CancelIndicator;
import org.eclipse.xtext.validation.Issue;

import com.google.inject.Inject;
import com.google.inject.Singleton;

import padwright.language.ide.hints.LineHints;
import padwright.language.ide.layout.LayoutService;
import padwright.language.shop.ShopFolder;

/** The common server with what it lacks, and what differs for shops of flute plans. */
@Singleton
final class PadwrightLanguageServer extends LanguageServerImpl {

	private static final String NAME = "Padwright";
	private static final String LINE_END = "\n";
	private static final String BLOCK_END = "}";
	private static final URI ANY_DOCUMENT = URI.createURI("any.plan");

	@Inject
	private ShopWorkspaceManager shops;
	@Inject
	private LongWork longWork;
	private ClientAbilities client;
	private boolean speaksAsItsClient;

	/** From its first message on, the whole program speaks the language of its client's user, if the client says it. */
	void speakAsItsClient() {
		speaksAsItsClient = true;
	}

	private void speakAs(InitializeParams client) {
		if (speaksAsItsClient && client.getLocale() != null) {
			Locale.setDefault(Locale.Category.DISPLAY, Locale.forLanguageTag(client.getLocale().replace('_', '-')));
		}
	}

	/** Also for the workbench, which reads documents in this program. */
	@Override
	protected ILanguageServerAccess getLanguageServerAccess() {
		return super.getLanguageServerAccess();
	}

	/** Reads a text that is in no shop, such as an older state of a document; nothing is linked. */
	IParseResult parse(String text) {
		return getService(ANY_DOCUMENT, IParser.class).parse(new StringReader(text));
	}

	@Override
	public CompletableFuture<InitializeResult> initialize(InitializeParams params) {
		client = ClientAbilities.of(params);
		speakAs(params);
		return super.initialize(params).thenApply(result -> {
			result.setServerInfo(new ServerInfo(NAME));
			// A plan's figures change with its stock and system too, which only the server knows.
			if (client.fetchesHintsAgain()) {
				getLanguageServerAccess().addBuildListener(built -> getLanguageClient().refreshInlayHints());
			}
			return result;
		});
	}

	@Override
	public void initialized(InitializedParams params) {
		super.initialized(params);
		if (client.watchesFiles()) {
			WatchedFiles.ask(getLanguageClient());
		}
		if (client.showsProgress()) {
			longWork.tell(getLanguageClient());
		}
		runToTheEnd(shops::open);
	}

	@Override
	public void cancelProgress(WorkDoneProgressCancelParams params) {
		longWork.stop(params.getToken().map(text -> text, String::valueOf));
	}

	/** What is found of a shop cut short would be half a shop from then on. */
	@Override
	public void didChangeWorkspaceFolders(DidChangeWorkspaceFoldersParams params) {
		runToTheEnd(() -> shops.didChangeWorkspaceFolders(params, CancelIndicator.NullImpl));
	}

	/**
	 * A change that no later one may cut short. It cuts short others, as every change does; what these left unread is
	 * read behind it.
	 */
	private void runToTheEnd(Runnable change) {
		getRequestManager().runWrite(() -> {
			change.run();
			return shops.didChangeFiles(List.of(), List.of());
		}, (cancelled, unread) -> unread.build(cancelled));
	}

	@Override
	protected ServerCapabilities createServerCapabilities(InitializeParams params) {
		ServerCapabilities capabilities = super.createServerCapabilities(params);
		capabilities.setSignatureHelpProvider(null);
		capabilities.setFoldingRangeProvider(true);
		capabilities.setInlayHintProvider(true);
		capabilities.setDocumentOnTypeFormattingProvider(
				new DocumentOnTypeFormattingOptions(LINE_END, List.of(BLOCK_END)));
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
			runToTheEnd(shops::reopen);
		}
		List<FileEvent> documents = params.getChanges().stream().filter(change -> isDocument(change.getUri()))
				.toList();
		super.didChangeWatchedFiles(new DidChangeWatchedFilesParams(documents));
	}

	/** Findings and hints tell lengths as the user wants them now. */
	@Override
	public void didChangeConfiguration(DidChangeConfigurationParams params) {
		ShownSettings.apply(params == null ? null : params.getSettings());
		runToTheEnd(shops::reopen);
	}

	private static boolean isMarker(String uri) {
		return uri.endsWith("/" + ShopFolder.MARKER);
	}

	private boolean isDocument(String uri) {
		return getResourceServiceProvider(URI.createURI(uri)) != null;
	}

	@Override
	protected Either<List<CompletionItem>, CompletionList> completion(CancelIndicator cancelled,
			CompletionParams params) {
		var offered = super.completion(cancelled, params);
		return shops.doRead(getURI(params), (document, resource) -> {
			new SnippetItems(client).adapt(offered.getRight().getItems(), document, params.getPosition());
			return offered;
		});
	}

	@Override
	public CompletableFuture<List<InlayHint>> inlayHint(InlayHintParams params) {
		return getRequestManager().runRead(cancelled -> {
			URI uri = getURI(params.getTextDocument());
			return shops.doRead(uri, (document, resource) -> getService(uri, LineHints.class)
					.hints(document, resource, params.getRange(), cancelled));
		});
	}

	@Override
	public CompletableFuture<List<? extends TextEdit>> onTypeFormatting(DocumentOnTypeFormattingParams params) {
		return getRequestManager().runRead(cancelled -> {
			URI uri = getURI(params.getTextDocument());
			return shops.doRead(uri, (document, resource) -> getService(uri, LayoutService.class)
					.formatTyped(resource, document, params.getPosition(), params.getCh()));
		});
	}

	@Override
	protected WorkspaceEdit rename(RenameParams params, CancelIndicator cancelled) {
		IRenameService2.Options options = new IRenameService2.Options();
		options.setLanguageServerAccess(new DirectAccess(getLanguageServerAccess()));
		options.setRenameParams(params);
		options.setCancelIndicator(cancelled);
		WorkspaceEdit edit = getService(getURI(params.getTextDocument()), IRenameService2.class).rename(options);
		forgetVersionsOfClosedDocuments(edit);
		return edit;
	}

	/** The client knows of none, and refuses an edit that asks for one. */
	private void forgetVersionsOfClosedDocuments(WorkspaceEdit edit) {
		if (edit != null && edit.getDocumentChanges() != null) {
			edit.getDocumentChanges().stream().map(change -> change.getLeft().getTextDocument())
					.filter(document -> !shops.isDocumentOpen(URI.createURI(document.getUri())))
					.forEach(document -> document.setVersion(null));
		}
	}

	@Override
	protected Either3<Range, PrepareRenameResult, PrepareRenameDefaultBehavior> prepareRename(
			PrepareRenameParams params, CancelIndicator cancelled) {
		IRenameService2.PrepareRenameOptions options = new IRenameService2.PrepareRenameOptions();
		options.setLanguageServerAccess(new DirectAccess(getLanguageServerAccess()));
		options.setParams(params);
		options.setCancelIndicator(cancelled);
		return getService(getURI(params), IRenameService2.class).prepareRename(options);
	}
}
