package padwright.language.ide.server;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;

import org.eclipse.lsp4j.DidChangeWatchedFilesCapabilities;
import org.eclipse.lsp4j.Registration;
import org.eclipse.lsp4j.ServerCapabilities;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import padwright.language.ide.solving.SolveKey;

class SessionTest {

	@TempDir
	private Path folder;

	@Test
	void goodbyeInOrderEndsTheServer() throws Exception {
		Connection connection = Connection.open(TestShop.example(folder).folder());
		assertEquals("Padwright", connection.initialized().getServerInfo().getName());
		assertTrue(connection.sayGoodbye());
	}

	@Test
	void closedPipeEndsTheServer() throws Exception {
		Connection connection = Connection.open(TestShop.example(folder).folder());
		assertFalse(connection.hangUp());
	}

	@Test
	void everythingForAnEditorIsAnnounced() throws Exception {
		try (Connection connection = Connection.open(TestShop.example(folder).folder())) {
			ServerCapabilities all = connection.initialized().getCapabilities();
			assertNotNull(all.getCompletionProvider());
			assertTrue(all.getHoverProvider().getLeft());
			assertTrue(all.getDefinitionProvider().getLeft());
			assertTrue(all.getReferencesProvider().getLeft());
			assertTrue(all.getDocumentHighlightProvider().getLeft());
			assertTrue(all.getDocumentSymbolProvider().getLeft());
			assertTrue(all.getWorkspaceSymbolProvider().getLeft());
			assertTrue(all.getRenameProvider().getRight().getPrepareProvider());
			assertTrue(all.getCodeActionProvider().getLeft());
			assertNotNull(all.getCodeLensProvider());
			assertEquals(List.of(SolveKey.COMMAND), all.getExecuteCommandProvider().getCommands());
			assertTrue(all.getDocumentFormattingProvider().getLeft());
			assertTrue(all.getDocumentRangeFormattingProvider().getLeft());
			assertEquals("\n", all.getDocumentOnTypeFormattingProvider().getFirstTriggerCharacter());
			assertEquals(List.of("}"), all.getDocumentOnTypeFormattingProvider().getMoreTriggerCharacter());
			assertNotNull(all.getSemanticTokensProvider().getFull());
			assertTrue(all.getFoldingRangeProvider().getLeft());
			assertTrue(all.getInlayHintProvider().getLeft());
			assertTrue(all.getWorkspace().getWorkspaceFolders().getSupported());
			assertTrue(all.getWorkspace().getWorkspaceFolders().getChangeNotifications().getRight());
		}
	}

	@Test
	void editorsThatWaitForItAreAskedToTellOfFiles() throws Exception {
		try (Connection connection = Connection.able(
				client -> client.getWorkspace().setDidChangeWatchedFiles(new DidChangeWatchedFilesCapabilities(true)),
				TestShop.example(folder).folder())) {
			Registration asked = connection.client().registered().get(0);
			assertEquals("workspace/didChangeWatchedFiles", asked.getMethod());
			String options = asked.getRegisterOptions().toString();
			assertTrue(options.contains("**/*.{keys,stock,plan}") && options.contains("**/padwright.shop"), options);
		}
	}
}
