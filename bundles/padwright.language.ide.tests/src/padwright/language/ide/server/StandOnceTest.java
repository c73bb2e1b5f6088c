package padwright.language.ide.server;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;

import org.eclipse.lsp4j.CompletionItem;
import org.eclipse.lsp4j.CompletionParams;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

import padwright.engine.length.LengthUnit;
import padwright.language.ide.words.TradeWords;
import padwright.workup.checks.IssueCodes;

/** What stands in one place is known in all others: units, touches, joints, kinds of pads. */
class StandOnceTest {

	@TempDir
	private Path folder;
	private TestShop shop;
	private Connection editor;

	@BeforeEach
	void openShop() throws Exception {
		shop = TestShop.empty(folder.resolve("shop"));
		shop.write("bench.stock", "stock Bench { kind gizmo { } pad Soft { thick 2 mm } }\n");
		shop.write("mini.keys", "system Mini { joint barrel touch Gizmo by R4 key A by Gizmo cup 16 mm note C4: Gizmo }\n");
		editor = Connection.open(shop.folder());
	}

	@AfterEach
	void close() throws Exception {
		editor.close();
	}

	@ParameterizedTest
	@EnumSource
	void aUnitIsWrittenWhereverALengthIs(LengthUnit unit) throws Exception {
		String sign = unit.symbol();
		assertEquals(List.of(), syntax("unit.keys", "unit %s\nsystem Unit { key A cup 16 %s }\n".formatted(sign, sign)));
		assertEquals(List.of(), syntax("unit.stock", """
				stock Unit { rule "" warn when pad.thick > 1 %s pad P { thick 1 %s +- 1 %s diameters 1 2 %s } }
				""".formatted(sign, sign, sign, sign)));
		assertEquals(List.of(), syntax("unit.plan",
				"plan Unit for Mini { bed 1..2 %s key A felt . 1 %s full +1 %s }\n".formatted(sign, sign, sign)));
	}

	@ParameterizedTest
	@EnumSource
	void aUnitIsOfferedAndExplained(LengthUnit unit) throws Exception {
		assertTrue(offered("unit.keys", "unit |").contains(unit.symbol()), unit.symbol());
		assertTrue(TradeWords.meaning(unit.symbol()).isPresent(), unit.symbol());
	}

	@Test
	void whatAShopDeclaresIsOfferedWhereItIsNamed() throws Exception {
		assertTrue(offered("more.keys", "system More based on Mini { note D4: |").contains("Gizmo"));
		assertTrue(offered("more.keys", "system More based on Mini { key B on |").contains("barrel"));
		assertTrue(offered("more.stock", "stock More with Bench { pad P { kind |").contains("gizmo"));
	}

	private List<String> syntax(String name, String text) throws Exception {
		Path file = shop.file(name);
		editor.type(file, text);
		return editor.client().diagnostics(Connection.uri(file), all -> true).stream()
				.filter(found -> found.getCode().getLeft().equals(IssueCodes.SYNTAX))
				.map(found -> found.getMessage().getLeft()).toList();
	}

	private List<String> offered(String name, String typed) throws Exception {
		Path file = shop.file(name);
		editor.type(file, typed.replace("|", ""));
		return editor.get(editor.server().getTextDocumentService().completion(
				new CompletionParams(Connection.document(file), Texts.start(typed, "|")))).getRight().getItems().stream()
				.map(CompletionItem::getLabel).toList();
	}
}
