package padwright.language.ide.server;

import static org.junit.jupiter.api.Assertions.assertFalse;

import java.nio.file.Path;
import java.util.List;

import org.eclipse.lsp4j.DidChangeWorkspaceFoldersParams;
import org.eclipse.lsp4j.DidCloseTextDocumentParams;
import org.eclipse.lsp4j.WorkspaceFolder;
import org.eclipse.lsp4j.WorkspaceFoldersChangeEvent;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Shops come and go while documents are typed in. */
class ShopsOpenedAndClosedTest {

	private static final int ROUNDS = 20;
	private static final String SYSTEM = "unit mm system S { key A closes B cup 16 deep 3 key B cup 16 deep 3 }\n";
	private static final String BROKEN = "unit mm system S { key A closes Z cup 16 deep 3 }\n";

	@TempDir
	private Path folder;

	/** The change is most often not read yet when its shop closes; then it must be forgotten, not stand in the way. */
	@Test
	void aChangeInAShopThatClosesDoesNotSpoilTheNext() throws Exception {
		TestShop gone = TestShop.empty(folder.resolve("gone"));
		TestShop stays = TestShop.empty(folder.resolve("stays"));
		Path typed = gone.write("a.keys", SYSTEM);
		Path judged = stays.write("b.keys", SYSTEM);
		try (Connection editor = Connection.open(gone.folder())) {
			for (int round = 0; round < ROUNDS; round++) {
				editor.type(typed, SYSTEM);
				close(editor, typed);
				change(editor, List.of(stays), List.of(gone));
				editor.type(judged, SYSTEM);
				editor.retype(judged, BROKEN);
				assertFalse(editor.client().diagnostics(Connection.uri(judged), found -> !found.isEmpty()).isEmpty());
				close(editor, judged);
				editor.client().diagnostics(Connection.uri(judged), List::isEmpty);
				change(editor, List.of(gone), List.of(stays));
			}
		}
	}

	private static void close(Connection editor, Path file) {
		editor.server().getTextDocumentService()
				.didClose(new DidCloseTextDocumentParams(Connection.document(file)));
	}

	private static void change(Connection editor, List<TestShop> opened, List<TestShop> closed) {
		editor.server().getWorkspaceService().didChangeWorkspaceFolders(new DidChangeWorkspaceFoldersParams(
				new WorkspaceFoldersChangeEvent(folders(opened), folders(closed))));
	}

	private static List<WorkspaceFolder> folders(List<TestShop> shops) {
		return shops.stream().map(shop -> new WorkspaceFolder(Connection.uri(shop.folder()), shop.folder().toString()))
				.toList();
	}
}
