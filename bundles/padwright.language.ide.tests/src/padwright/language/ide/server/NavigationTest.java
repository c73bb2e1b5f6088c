package padwright.language.ide.server;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

import org.eclipse.lsp4j.DefinitionParams;
import org.eclipse.lsp4j.DocumentHighlight;
import org.eclipse.lsp4j.DocumentHighlightParams;
import org.eclipse.lsp4j.DocumentSymbol;
import org.eclipse.lsp4j.DocumentSymbolParams;
import org.eclipse.lsp4j.FoldingRange;
import org.eclipse.lsp4j.FoldingRangeRequestParams;
import org.eclipse.lsp4j.Location;
import org.eclipse.lsp4j.ReferenceContext;
import org.eclipse.lsp4j.ReferenceParams;
import org.eclipse.lsp4j.WorkspaceSymbol;
import org.eclipse.lsp4j.WorkspaceSymbolParams;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class NavigationTest {

	private static final String SYSTEM = "// One.\n// Two.\nsystem Mini {\n\tkey A \"a label\"\n\tkey B closes A\n"
			+ "\tkey C holds A\n\tnote C4 :\n}\n";
	private static final String PLAN = "plan Work for Mini {\n\tkey A\n\tkey B\n"
			+ "\tregulate B > A : 1 thou light at driven\n}\n";

	@TempDir
	private Path folder;
	private Path keys;
	private Path plan;
	private Connection editor;

	@BeforeEach
	void openShop() throws Exception {
		TestShop shop = TestShop.empty(folder.resolve("shop"));
		keys = shop.write("mini.keys", SYSTEM);
		plan = shop.write("work.plan", PLAN);
		editor = Connection.open(shop.folder());
	}

	@AfterEach
	void close() throws Exception {
		editor.close();
	}

	@Test
	void fromARowToTheKeyInItsSystem() throws Exception {
		List<? extends Location> found = editor.get(editor.server().getTextDocumentService().definition(
				new DefinitionParams(Connection.document(plan), Texts.start(PLAN, "A\n")))).getLeft();
		assertEquals(List.of("mini.keys 3"), found.stream().map(NavigationTest::place).toList());
	}

	@Test
	void fromAKeyToAllThatNamesIt() throws Exception {
		List<? extends Location> found = editor.get(editor.server().getTextDocumentService().references(
				new ReferenceParams(Connection.document(keys), Texts.start(SYSTEM, "A \""),
						new ReferenceContext(true))));
		assertEquals(Set.of("mini.keys 3", "mini.keys 4", "mini.keys 5", "work.plan 1", "work.plan 3"),
				found.stream().map(NavigationTest::place).collect(Collectors.toCollection(TreeSet::new)));
	}

	@Test
	void occurrencesAreMarked() throws Exception {
		List<? extends DocumentHighlight> found = editor.get(editor.server().getTextDocumentService()
				.documentHighlight(new DocumentHighlightParams(Connection.document(plan), Texts.start(PLAN, "A\n"))));
		assertEquals(List.of(1, 3), found.stream().map(mark -> mark.getRange().getStart().getLine()).sorted().toList());
	}

	@Test
	void outlineNamesWhatADocumentHolds() throws Exception {
		DocumentSymbol system = outline(keys).get(0);
		assertEquals("Mini", system.getName());
		assertEquals(List.of("A", "B", "C", "note C4"), system.getChildren().stream().map(DocumentSymbol::getName).toList());
		assertEquals("a label", system.getChildren().get(0).getDetail());
		DocumentSymbol work = outline(plan).get(0);
		assertEquals(List.of("A", "B", "B > A"), work.getChildren().stream().map(DocumentSymbol::getName).toList());
		assertEquals("a label", work.getChildren().get(0).getDetail());
	}

	@Test
	void whatIsPickedInTheOutlineIsSelectedByItsName() throws Exception {
		assertEquals(List.of("A", "B", "C", "C4"), selected(keys, SYSTEM));
		assertEquals(List.of("A", "B", "B"), selected(plan, PLAN));
	}

	private List<String> selected(Path file, String text) throws Exception {
		return outline(file).get(0).getChildren().stream()
				.map(symbol -> Texts.in(symbol.getSelectionRange(), text)).toList();
	}

	private List<DocumentSymbol> outline(Path file) throws Exception {
		return editor.get(editor.server().getTextDocumentService()
				.documentSymbol(new DocumentSymbolParams(Connection.document(file)))).stream()
				.map(symbol -> symbol.getRight()).toList();
	}

	@Test
	void shopIsSearchedByName() throws Exception {
		List<? extends WorkspaceSymbol> found = editor.get(editor.server().getWorkspaceService()
				.symbol(new WorkspaceSymbolParams("in"))).getRight();
		assertEquals(List.of("Mini"), found.stream().map(WorkspaceSymbol::getName).toList());
	}

	@Test
	void blocksAndCommentsFold() throws Exception {
		List<FoldingRange> folds = editor.get(editor.server().getTextDocumentService()
				.foldingRange(new FoldingRangeRequestParams(Connection.document(keys))));
		Set<String> lines = folds.stream().map(fold -> fold.getStartLine() + "-" + fold.getEndLine())
				.collect(Collectors.toSet());
		assertTrue(lines.equals(Set.of("0-1", "2-7")), lines.toString());
	}

	private static String place(Location location) {
		return location.getUri().substring(location.getUri().lastIndexOf('/') + 1) + " "
				+ location.getRange().getStart().getLine();
	}
}
