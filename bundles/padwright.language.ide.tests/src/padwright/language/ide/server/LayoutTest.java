package padwright.language.ide.server;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import org.eclipse.lsp4j.DocumentFormattingParams;
import org.eclipse.lsp4j.DocumentOnTypeFormattingParams;
import org.eclipse.lsp4j.DocumentRangeFormattingParams;
import org.eclipse.lsp4j.FormattingOptions;
import org.eclipse.lsp4j.Position;
import org.eclipse.lsp4j.Range;
import org.eclipse.lsp4j.TextEdit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import padwright.language.PadwrightStandaloneSetup;
import padwright.language.formatting2.DocumentFormatter;
import padwright.language.shop.Shop;
import padwright.language.shop.ShopFolder;

class LayoutTest {

	private static final FormattingOptions EDITORS_OWN = new FormattingOptions(8, true);
	private static final String SQUEEZED = "system  Mini {\n  key   A cup 16   mm\n  key  B closes  A\n}\n";

	@TempDir
	private Path folder;

	@Test
	void isThatOfTheCommandLine() throws Exception {
		TestShop shop = TestShop.example(folder);
		List<Path> files = ShopFolder.documents(folder);
		for (Path file : files) {
			Files.writeString(file, Files.readString(file).replace("\t", " ").replace(" empty", "   empty"));
		}
		var language = PadwrightStandaloneSetup.doSetup();
		Shop commandLine = Shop.open(language, files);
		try (Connection editor = Connection.open(shop.folder())) {
			for (Path file : files) {
				List<? extends TextEdit> edits = editor.get(editor.server().getTextDocumentService()
						.formatting(new DocumentFormattingParams(Connection.document(file), EDITORS_OWN)));
				assertEquals(language.getInstance(DocumentFormatter.class).format(commandLine.resource(file)),
						Texts.apply(edits, Files.readString(file)));
			}
		}
	}

	@Test
	void ofARangeLeavesTheRest() throws Exception {
		Path file = TestShop.empty(folder.resolve("shop")).write("mini.keys", SQUEEZED);
		Range range = new Range(new Position(2, 0), new Position(2, 18));
		try (Connection editor = Connection.open(file.getParent())) {
			List<? extends TextEdit> edits = editor.get(editor.server().getTextDocumentService().rangeFormatting(
					new DocumentRangeFormattingParams(Connection.document(file), EDITORS_OWN, range)));
			assertEquals(SQUEEZED.replace("  key  B closes  A", "\tkey B closes A"), Texts.apply(edits, SQUEEZED));
		}
	}

	@Test
	void ofALineComesWithItsEnd() throws Exception {
		String typed = SQUEEZED.replace("closes  A\n", "closes  A\n\n");
		Path file = TestShop.empty(folder.resolve("shop")).write("mini.keys", typed);
		try (Connection editor = Connection.open(file.getParent())) {
			List<? extends TextEdit> edits = editor.get(editor.server().getTextDocumentService().onTypeFormatting(
					new DocumentOnTypeFormattingParams(Connection.document(file), EDITORS_OWN, new Position(3, 0),
							"\n")));
			assertEquals(typed.replace("  key  B closes  A", "\tkey B closes A"), Texts.apply(edits, typed));
		}
	}

	@Test
	void ofABlocksLastLineComesWithItsBrace() throws Exception {
		String typed = SQUEEZED.replace("A\n}", "A\n   }");
		Path file = TestShop.empty(folder.resolve("shop")).write("mini.keys", typed);
		try (Connection editor = Connection.open(file.getParent())) {
			List<? extends TextEdit> edits = editor.get(editor.server().getTextDocumentService().onTypeFormatting(
					new DocumentOnTypeFormattingParams(Connection.document(file), EDITORS_OWN, new Position(3, 4),
							"}")));
			assertEquals(SQUEEZED, Texts.apply(edits, typed));
		}
	}

	@Test
	void ofUnreadableTextIsLeftAsItIs() throws Exception {
		Path file = TestShop.empty(folder.resolve("shop")).write("mini.keys", SQUEEZED + "nonsense  here");
		try (Connection editor = Connection.open(file.getParent())) {
			assertEquals(List.of(), editor.get(editor.server().getTextDocumentService()
					.formatting(new DocumentFormattingParams(Connection.document(file), EDITORS_OWN))));
		}
	}
}
