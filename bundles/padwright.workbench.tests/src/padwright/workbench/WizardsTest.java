package padwright.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import org.eclipse.core.resources.IMarker;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.texteditor.ITextEditorActionConstants;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import padwright.language.start.StockText;
import padwright.workbench.bench.Bench;
import padwright.workbench.controls.Named;
import padwright.workbench.editor.PlanEditor;
import padwright.workbench.session.OpenShops;

/** New shops, systems, plans and rounds, as their wizards make them. */
class WizardsTest {

	private static final String FIRST = "plans/first.plan";

	@TempDir
	private Path folder;
	private Driver bench;

	@BeforeEach
	void openShop() throws Exception {
		bench = Driver.withExampleShop(folder);
	}

	@AfterEach
	void closeShop() throws Exception {
		bench.close();
	}

	@Test
	void aNewShopHasAStockListAndIsOpened() throws Exception {
		Windows wizard = Windows.open("padwright.workbench.newShop", "New Shop");
		wizard.type("Within folder:", folder.toString());
		wizard.type("Name:", "shop");
		assertFalse(wizard.canPush("Finish"), "a folder that is there");
		wizard.type("Name:", "My shop");
		wizard.push("Finish");
		wizard.waitForEnd();
		Path shop = folder.resolve("My shop").toRealPath();
		assertEquals(StockText.starter("Bench"), Files.readString(shop.resolve("stock/bench.stock")));
		assertEquals(Files.readString(bench.path("systems/boehm.keys")), Files.readString(shop.resolve("systems/boehm.keys")));
		assertTrue(OpenShops.folders().contains(shop));
		Driver.ui(() -> {
			OpenShops.close(OpenShops.open(shop, null), null);
			return null;
		});
	}

	@Test
	void aNewSystemExtendsOneOfTheShop() throws Exception {
		bench.open(FIRST);
		Windows wizard = Windows.open("padwright.workbench.newSystem", "New Key System");
		wizard.choose("Extends:", "BoehmC");
		wizard.type("Name:", "BoehmC");
		Driver.waitFor("a taken name", () -> wizard.all(Text.class).stream()
				.anyMatch(text -> text.getText().contains("taken")));
		wizard.type("Name:", "two words");
		assertTrue(wizard.says("cannot be a name"));
		assertFalse(wizard.canPush("Finish"));
		wizard.type("Name:", "MyFlute");
		wizard.type("Title:", "My flute");
		wizard.push("Finish");
		wizard.waitForEnd();
		assertEquals("unit mm\n\nsystem MyFlute \"My flute\" based on BoehmC {\n}\n",
				Files.readString(bench.path("systems/my-flute.keys")));
	}

	@Test
	void aNewPlanHasARowForEveryKeyAndTheLinesOfItsTemplate() throws Exception {
		bench.open(FIRST);
		Windows wizard = Windows.open("padwright.workbench.newPlan", "New Plan");
		wizard.choose("First lines as in:", "SpringService");
		wizard.choose("Key system:", "BoehmC");
		wizard.choose("Stock list:", "Bench");
		wizard.type("Name:", "NextSpring");
		wizard.type("Serial number:", "A-1042");
		wizard.push("Finish");
		wizard.waitForEnd();
		String plan = "plans/next-spring.plan";
		String text = Files.readString(bench.path(plan));
		assertTrue(text.startsWith("plan NextSpring for BoehmC serial \"A-1042\" with Bench {\n\tdate 20"), text);
		assertTrue(text.contains("\tfit Rigid on Disc20 with Clear glue Shellac\n\tread at 12 3 6 9\n\tkey Tr2\n"), text);
		assertEquals(17, text.lines().filter(line -> line.startsWith("\tkey ")).count());
		assertEquals(List.of(), bench.markers(plan).stream()
				.filter(marker -> marker.getAttribute(IMarker.SEVERITY, 0) == IMarker.SEVERITY_ERROR).toList());
	}

	@Test
	void aNewPlanIsForTheOpenSystemAndSaysWhatIsAsked() throws Exception {
		bench.open(FIRST);
		Driver.waitFor("the plan", () -> Bench.of(Driver.page().getWorkbenchWindow()).shown().plan().isPresent());
		Windows wizard = Windows.open("padwright.workbench.newPlan", "New Plan");
		wizard.type("Name:", "Asked");
		wizard.push("Next >");
		wizard.choose("Pad:", "Rigid");
		wizard.choose("Film:", "Clear");
		wizard.choose("Saliva:", "acidic");
		wizard.type("Full shims together, from..to in thou:", "16..13");
		assertFalse(wizard.canPush("Finish"));
		wizard.type("Full shims together, from..to in thou:", "13..16");
		wizard.type("Hours that are read:", "12 3 6 9");
		wizard.push("Finish");
		wizard.waitForEnd();
		String text = Files.readString(bench.path("plans/asked.plan"));
		assertTrue(text.startsWith("plan Asked for BoehmC with Bench {\n\tdate 20"), text);
		assertTrue(text.contains("\n\tseat within 0.5 thou\n\tbed 13..16 thou\n\tplayer { saliva acidic }\n"
				+ "\tfit Rigid with Clear\n\tread at 12 3 6 9\n\tkey "), text);
	}

	@Test
	void aRoundIsTypedLikeAnIndicatorDoesAndUndoneInOneStep() throws Exception {
		PlanEditor editor = bench.open(FIRST);
		String before = Driver.text(editor);
		Driver.waitFor("the plan", () -> Bench.of(Driver.page().getWorkbenchWindow()).shown()
				.plan().filter(plan -> plan.text().equals(before)).isPresent());
		Windows wizard = Windows.open("padwright.workbench.newRound", "New Round of Readings");
		wizard.push("All");
		wizard.push("Next >");
		Driver.waitFor("the grid", () -> wizard.all(Text.class).stream().anyMatch(cell -> Named.of(cell).equals("Fs at 12.5")));
		for (String figure : List.of(".", "0.6", "1", ".", ".", ".", ".", ".", ".", ".", ".", ".", ".", ".", ".", ".")) {
			typeWithEnter(figure);
		}
		wizard.push("Finish");
		wizard.waitForEnd();
		String after = Driver.text(editor);
		String turned = " felt at 12.5 2 3.5 5 6.5 8 9.5 11 : ";
		assertTrue(after.contains("felt . . 0.5 . . 0.5 1 0.5" + turned + ". 0.5 1 . . . . .\n"), after);
		assertTrue(after.contains("felt . . . . . . . ." + turned + ". . . . . . . .\n"), after);
		assertTrue(after.contains("felt . . 1 1 1.5 1 0.5 .\n"), after);
		Driver.ui(() -> {
			editor.getAction(ITextEditorActionConstants.UNDO).run();
			return null;
		});
		assertEquals(before, Driver.text(editor));
	}

	/** Into whatever has the focus. */
	private static void typeWithEnter(String figure) throws Exception {
		Driver.ui(() -> {
			Text cell = (Text) Driver.display().getFocusControl();
			cell.setText(figure);
			Event enter = new Event();
			enter.detail = SWT.TRAVERSE_RETURN;
			enter.doit = true;
			cell.notifyListeners(SWT.Traverse, enter);
			return null;
		});
	}
}
