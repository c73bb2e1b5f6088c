package padwright.language.ide.server;

import java.util.Optional;

import org.eclipse.lsp4j.ClientCapabilities;
import org.eclipse.lsp4j.CompletionCapabilities;
import org.eclipse.lsp4j.CompletionItemCapabilities;
import org.eclipse.lsp4j.CompletionItemInsertTextModeSupportCapabilities;
import org.eclipse.lsp4j.DidChangeWatchedFilesCapabilities;
import org.eclipse.lsp4j.InitializeParams;
import org.eclipse.lsp4j.InlayHintWorkspaceCapabilities;
import org.eclipse.lsp4j.InsertTextMode;
import org.eclipse.lsp4j.TextDocumentClientCapabilities;
import org.eclipse.lsp4j.WindowClientCapabilities;
import org.eclipse.lsp4j.WorkspaceClientCapabilities;

/**
 * What a client said that it can do, as far as the server goes by it.
 *
 * @param fetchesHintsAgain whether it fetches hints again when it is asked to
 * @param snippets whether it knows stops in what it inserts
 * @param indents whether it can be asked to indent what it inserts like the line it stands in
 * @param watchesFiles whether it can be asked to tell of files that change outside of it
 * @param showsProgress whether it shows how far long work has come
 */
record ClientAbilities(boolean fetchesHintsAgain, boolean snippets, boolean indents, boolean watchesFiles,
		boolean showsProgress) {

	static ClientAbilities of(InitializeParams params) {
		Optional<ClientCapabilities> client = Optional.ofNullable(params.getCapabilities());
		Optional<CompletionItemCapabilities> items = client.map(ClientCapabilities::getTextDocument)
				.map(TextDocumentClientCapabilities::getCompletion).map(CompletionCapabilities::getCompletionItem);
		return new ClientAbilities(
				client.map(ClientCapabilities::getWorkspace).map(WorkspaceClientCapabilities::getInlayHint)
						.map(InlayHintWorkspaceCapabilities::getRefreshSupport).orElse(false),
				items.map(CompletionItemCapabilities::getSnippetSupport).orElse(false),
				items.map(CompletionItemCapabilities::getInsertTextModeSupport)
						.map(CompletionItemInsertTextModeSupportCapabilities::getValueSet)
						.map(modes -> modes.contains(InsertTextMode.AdjustIndentation)).orElse(false),
				client.map(ClientCapabilities::getWorkspace)
						.map(WorkspaceClientCapabilities::getDidChangeWatchedFiles)
						.map(DidChangeWatchedFilesCapabilities::getDynamicRegistration).orElse(false),
				client.map(ClientCapabilities::getWindow).map(WindowClientCapabilities::getWorkDoneProgress)
						.orElse(false));
	}
}
