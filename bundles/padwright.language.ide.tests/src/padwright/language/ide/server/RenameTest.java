package padwright.language.ide.server;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.nio.file.Path;
import java.util.concurrent.ExecutionException;

import org.eclipse.lsp4j.Position;
import org.eclipse.lsp4j.PrepareRenameParams;
import org.eclipse.lsp4j.Range;
import org.eclipse.lsp4j.RenameParams;
import org.eclipse.lsp4j.WorkspaceEdit;
import org.eclipse.lsp4j.WorkspaceEditCapabilities;
import org.eclipse.lsp4j.jsonrpc.messages.Either3;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RenameTest {

	private static final String SYSTEM = "system Mini { // a comment that stays\n\tkey  A\n\tkey B closes A\n"
			+ "\tkey C holds A\n\ttouch L1\n\tnote C4 : half L1\n}\n";
	private static final String MORE = "system More based on Mini {\n\tchange A closed\n}\n";
	private static final String PLAN = "plan Work for More with Bench {\n\tfit Bench.Soft\n\tkey A\n\tkey B\n"
			+ "\tregulate B > A : 1 thou light at driven\n}\n";
	private static final String STOCK = "stock Bench {\n\tmaterial paper { }\n\tpad Soft { }\n"
			+ "\tfilm Thin paper { 1 }\n"
			+ "\trule \"no paper\" warn when shim.material is paper and pad is Soft\n}\n";

	@TempDir
	private Path folder;
	private TestShop shop;

	@BeforeEach
	void writeShop() throws Exception {
		shop = TestShop.empty(folder.resolve("shop"));
		shop.write("mini.keys", SYSTEM);
		shop.write("more.keys", MORE);
		shop.write("work.plan", PLAN);
		shop.write("bench.stock", STOCK);
	}

	@Test
	void ofAKeyReachesEveryFile() throws Exception {
		WorkspaceEdit edit = rename("mini.keys", Texts.start(SYSTEM, "A\n"), "As");
		assertEquals(SYSTEM.replace("A\n", "As\n"), edited(edit, "mini.keys", SYSTEM));
		assertEquals(MORE.replace("change A", "change As"), edited(edit, "more.keys", MORE));
		assertEquals(PLAN.replace("key A", "key As").replace("> A", "> As"), edited(edit, "work.plan", PLAN));
	}

	@Test
	void ofATouchTakesQuotationMarksWhereTheNewNameNeedsThem() throws Exception {
		WorkspaceEdit edit = rename("mini.keys", Texts.start(SYSTEM, "L1\n"), "first finger");
		assertEquals(SYSTEM.replace("L1", "\"first finger\""), edited(edit, "mini.keys", SYSTEM));
	}

	@Test
	void ofAKeyWorksWhereItIsNamed() throws Exception {
		WorkspaceEdit edit = rename("work.plan", Texts.start(PLAN, "A\n"), "As");
		assertEquals(SYSTEM.replace("A\n", "As\n"), edited(edit, "mini.keys", SYSTEM));
		assertEquals(MORE.replace("change A", "change As"), edited(edit, "more.keys", MORE));
		assertEquals(PLAN.replace("key A", "key As").replace("> A", "> As"), edited(edit, "work.plan", PLAN));
	}

	@Test
	void asksForVersionsOfOpenDocumentsOnly() throws Exception {
		try (Connection editor = Connection.able(client -> {
			client.getWorkspace().setWorkspaceEdit(new WorkspaceEditCapabilities());
			client.getWorkspace().getWorkspaceEdit().setDocumentChanges(true);
		}, shop.folder())) {
			Path plan = shop.file("work.plan");
			editor.type(plan, PLAN);
			editor.retype(plan, PLAN + "\n");
			WorkspaceEdit edit = editor.get(editor.server().getTextDocumentService()
					.rename(new RenameParams(Connection.document(plan), Texts.start(PLAN, "A\n"), "As")));
			assertEquals(3, edit.getDocumentChanges().size());
			edit.getDocumentChanges().stream().map(change -> change.getLeft().getTextDocument())
					.forEach(document -> assertEquals(document.getUri().endsWith(".plan") ? 2 : null,
							document.getVersion(), document::getUri));
		}
	}

	@Test
	void ofAnArticleWorksWhereItIsNamed() throws Exception {
		WorkspaceEdit edit = rename("work.plan", Texts.start(PLAN, "Soft"), "Softer");
		assertEquals(STOCK.replace("Soft", "Softer"), edited(edit, "bench.stock", STOCK));
		assertEquals(PLAN.replace("Bench.Soft", "Softer"), edited(edit, "work.plan", PLAN));
	}

	@Test
	void ofASystemWorksWhereItIsNamed() throws Exception {
		WorkspaceEdit edit = rename("work.plan", Texts.start(PLAN, "More"), "Less");
		assertEquals(MORE.replace("More", "Less"), edited(edit, "more.keys", MORE));
		assertEquals(PLAN.replace("More", "Less"), edited(edit, "work.plan", PLAN));
	}

	@Test
	void ofAnArticleReachesRulesAndPlans() throws Exception {
		WorkspaceEdit edit = rename("bench.stock", Texts.start(STOCK, "Soft"), "Softer");
		assertEquals(STOCK.replace("Soft", "Softer"), edited(edit, "bench.stock", STOCK));
		assertEquals(PLAN.replace("Bench.Soft", "Softer"), edited(edit, "work.plan", PLAN));
	}

	@Test
	void ofAMaterialReachesRulesButNotTheirWords() throws Exception {
		WorkspaceEdit edit = rename("bench.stock", Texts.start(STOCK, "paper"), "card");
		assertEquals(STOCK.replace("paper", "card").replace("no card", "no paper"),
				edited(edit, "bench.stock", STOCK));
	}

	@Test
	void toANameThatIsTakenIsRefused() {
		assertThrows(ExecutionException.class, () -> rename("mini.keys", Texts.start(SYSTEM, "A\n"), "B"));
	}

	@Test
	void toWhatIsNoNameIsRefused() {
		assertThrows(ExecutionException.class, () -> rename("mini.keys", Texts.start(SYSTEM, "A\n"), "A\"1"));
	}

	@Test
	void isOfferedOnNamesOnly() throws Exception {
		assertEquals("A", Texts.in(prepared(Texts.start(SYSTEM, "A\n")).getFirst(), SYSTEM));
		assertNull(prepared(Texts.start(SYSTEM, "closes")));
	}

	private Either3<Range, ?, ?> prepared(Position position)
			throws Exception {
		try (Connection editor = Connection.open(shop.folder())) {
			return editor.get(editor.server().getTextDocumentService()
					.prepareRename(new PrepareRenameParams(Connection.document(shop.file("mini.keys")), position)));
		}
	}

	private WorkspaceEdit rename(String file, Position position, String name) throws Exception {
		try (Connection editor = Connection.open(shop.folder())) {
			return editor.get(editor.server().getTextDocumentService()
					.rename(new RenameParams(Connection.document(shop.file(file)), position, name)));
		}
	}

	private String edited(WorkspaceEdit edit, String file, String text) {
		return Texts.apply(Texts.of(edit, Connection.uri(shop.file(file))), text);
	}
}
