package padwright.language.ide.server;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Predicate;

import org.eclipse.lsp4j.Diagnostic;
import org.eclipse.lsp4j.DidChangeWatchedFilesParams;
import org.eclipse.lsp4j.FileChangeType;
import org.eclipse.lsp4j.FileEvent;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import padwright.language.PadwrightStandaloneSetup;
import padwright.language.shop.Shop;
import padwright.language.shop.ShopFinding;
import padwright.language.shop.ShopFolder;
import padwright.workup.checks.IssueCodes;

class DiagnosticsTest {

	private static final String SYSTEM = "system Mini { key A cup 16 mm key B closes A cup 16 mm }";
	private static final String PLAN = "plan Work for Mini { key A key B }";

	@TempDir
	private Path folder;
	private TestShop shop;

	@BeforeEach
	void writeShop() throws Exception {
		shop = TestShop.empty(folder.resolve("shop"));
	}

	@Test
	void wholeShopIsJudgedUnaskedAsOnTheCommandLine() throws Exception {
		TestShop example = TestShop.example(folder.resolve("example"));
		List<Path> files = ShopFolder.documents(example.folder());
		Shop commandLine = Shop.open(PadwrightStandaloneSetup.doSetup(), files);
		try (Connection editor = Connection.open(example.folder())) {
			for (Path file : files) {
				List<String> findings = editor.client().diagnostics(Connection.uri(file), found -> true).stream()
						.map(DiagnosticsTest::text).sorted().toList();
				assertEquals(commandLine.findings(file).stream().map(DiagnosticsTest::text).sorted().toList(),
						findings, file.toString());
			}
		}
	}

	@Test
	void typingBringsAndTakesFindings() throws Exception {
		Path keys = shop.write("mini.keys", SYSTEM);
		try (Connection editor = Connection.open(shop.folder())) {
			editor.client().diagnostics(Connection.uri(keys), List::isEmpty);
			editor.type(keys, SYSTEM.replace("closes A", "closes Z"));
			editor.client().diagnostics(Connection.uri(keys), has(IssueCodes.LINK));
			editor.retype(keys, SYSTEM);
			editor.client().diagnostics(Connection.uri(keys), List::isEmpty);
		}
	}

	@Test
	void keyRenamedInAnUnsavedSystemShowsInThePlan() throws Exception {
		Path keys = shop.write("mini.keys", SYSTEM);
		Path plan = shop.write("work.plan", PLAN);
		try (Connection editor = Connection.open(shop.folder())) {
			editor.client().diagnostics(Connection.uri(plan), List::isEmpty);
			editor.type(keys, SYSTEM.replace("key A", "key As").replace("closes A", "closes As"));
			editor.client().diagnostics(Connection.uri(plan), has(IssueCodes.LINK));
		}
	}

	@Test
	void changeInAnExtendedSystemReachesPlansForWhatExtendsIt() throws Exception {
		Path keys = shop.write("mini.keys", SYSTEM);
		shop.write("more.keys", "system More based on Mini { key C }");
		Path plan = shop.write("work.plan", PLAN.replace("Mini", "More"));
		try (Connection editor = Connection.open(shop.folder())) {
			editor.client().diagnostics(Connection.uri(plan), List::isEmpty);
			editor.type(keys, SYSTEM.replace("key B closes A cup 16 mm", ""));
			editor.client().diagnostics(Connection.uri(plan), has(IssueCodes.LINK));
		}
	}

	@Test
	void secondOfANameShowsInBothFiles() throws Exception {
		Path keys = shop.write("mini.keys", SYSTEM);
		Path twin = shop.write("twin.keys", "system Twin { }");
		try (Connection editor = Connection.open(shop.folder())) {
			editor.type(twin, "system Mini { }");
			editor.client().diagnostics(Connection.uri(twin), has(IssueCodes.DUPLICATE_NAME));
			editor.client().diagnostics(Connection.uri(keys), has(IssueCodes.DUPLICATE_NAME));
		}
	}

	@Test
	void fileChangedOutsideIsReadAgain() throws Exception {
		Path keys = shop.write("mini.keys", SYSTEM);
		Path plan = shop.write("work.plan", PLAN);
		try (Connection editor = Connection.open(shop.folder())) {
			Files.delete(keys);
			tell(editor, keys, FileChangeType.Deleted);
			editor.client().diagnostics(Connection.uri(plan), has(IssueCodes.LINK));
			shop.write("mini.keys", SYSTEM);
			tell(editor, keys, FileChangeType.Created);
			editor.client().diagnostics(Connection.uri(plan), List::isEmpty);
		}
	}

	@Test
	void fileThatCannotBeReadIsToldAndKeepsNoOtherFromBeingRead() throws Exception {
		Path strange = shop.file("strange.plan");
		Files.write(strange, new byte[] { 'p', (byte) 0xFF, 'q' });
		Path keys = shop.write("mini.keys", SYSTEM.replace("closes A", "closes Z"));
		try (Connection editor = Connection.open(shop.folder())) {
			editor.client().diagnostics(Connection.uri(keys), has(IssueCodes.LINK));
			assertEquals(List.of("1:1 unreadable This file is not UTF-8 text; save it again with the encoding UTF-8."),
					editor.client().diagnostics(Connection.uri(strange), found -> true).stream()
							.map(DiagnosticsTest::text).toList());
			shop.write("strange.plan", "");
			tell(editor, strange, FileChangeType.Changed);
			editor.client().diagnostics(Connection.uri(strange), List::isEmpty);
		}
	}

	@Test
	void fileToldOfThatIsNotThereKeepsNoOtherFromBeingRead() throws Exception {
		Path keys = shop.write("mini.keys", SYSTEM);
		try (Connection editor = Connection.open(shop.folder())) {
			editor.client().diagnostics(Connection.uri(keys), List::isEmpty);
			tell(editor, shop.file("gone.plan"), FileChangeType.Changed);
			editor.type(keys, SYSTEM.replace("closes A", "closes Z"));
			editor.client().diagnostics(Connection.uri(keys), has(IssueCodes.LINK));
		}
	}

	@Test
	void everyRootFolderIsAShopOfItsOwn() throws Exception {
		shop.write("mini.keys", SYSTEM);
		TestShop other = TestShop.empty(folder.resolve("other"));
		Path stranger = other.write("work.plan", PLAN);
		Path own = shop.write("work.plan", PLAN);
		try (Connection editor = Connection.open(shop.folder(), other.folder())) {
			editor.client().diagnostics(Connection.uri(own), List::isEmpty);
			editor.client().diagnostics(Connection.uri(stranger), has(IssueCodes.LINK));
		}
	}

	@Test
	void folderInsideAShopSeesTheWholeShop() throws Exception {
		shop.write("systems/mini.keys", SYSTEM);
		Path plan = shop.write("plans/work.plan", PLAN);
		try (Connection editor = Connection.open(plan.getParent())) {
			editor.client().diagnostics(Connection.uri(plan), List::isEmpty);
		}
	}

	@Test
	void markedShopBelowTheOpenFolderIsOneOfItsOwn() throws Exception {
		Path outside = Files.writeString(folder.resolve("outside.plan"), PLAN);
		shop.write("mini.keys", SYSTEM);
		Path inside = shop.write("work.plan", PLAN);
		try (Connection editor = Connection.open(folder)) {
			editor.client().diagnostics(Connection.uri(inside), List::isEmpty);
			editor.client().diagnostics(Connection.uri(outside), has(IssueCodes.LINK));
		}
	}

	@Test
	void markThatComesLaterPartsAShop() throws Exception {
		Path open = Files.createDirectories(folder.resolve("open"));
		Path part = Files.createDirectories(open.resolve("part"));
		Files.writeString(part.resolve("mini.keys"), SYSTEM);
		Path plan = Files.writeString(open.resolve("work.plan"), PLAN);
		try (Connection editor = Connection.open(open)) {
			editor.client().diagnostics(Connection.uri(plan), List::isEmpty);
			tell(editor, TestShop.empty(part).file(ShopFolder.MARKER), FileChangeType.Created);
			editor.client().diagnostics(Connection.uri(plan), has(IssueCodes.LINK));
		}
	}

	@Test
	void fileWithoutAnOpenFolderFindsItsShop() throws Exception {
		shop.write("systems/mini.keys", SYSTEM);
		Path plan = shop.write("plans/work.plan", PLAN);
		try (Connection editor = Connection.open()) {
			editor.type(plan, PLAN);
			assertTrue(editor.client().diagnostics(Connection.uri(plan), found -> true).isEmpty());
		}
	}

	@Test
	void plainestEditorIsServedToo() throws Exception {
		shop.write("mini.keys", SYSTEM);
		Path plan = shop.write("work.plan", PLAN);
		try (Connection editor = Connection.plain()) {
			editor.type(plan, PLAN.replace("key B", "key Z"));
			editor.client().diagnostics(Connection.uri(plan), has(IssueCodes.LINK));
		}
	}

	private static void tell(Connection editor, Path file, FileChangeType change) {
		editor.server().getWorkspaceService().didChangeWatchedFiles(
				new DidChangeWatchedFilesParams(List.of(new FileEvent(Connection.uri(file), change))));
	}

	private static Predicate<List<Diagnostic>> has(String code) {
		return found -> found.stream().anyMatch(diagnostic -> diagnostic.getCode().getLeft().equals(code));
	}

	private static String text(Diagnostic diagnostic) {
		return (diagnostic.getRange().getStart().getLine() + 1) + ":"
				+ (diagnostic.getRange().getStart().getCharacter() + 1) + " " + diagnostic.getCode().getLeft() + " "
				+ diagnostic.getMessage().getLeft();
	}

	private static String text(ShopFinding finding) {
		return finding.line() + ":" + finding.column() + " " + finding.code() + " " + finding.message();
	}
}
