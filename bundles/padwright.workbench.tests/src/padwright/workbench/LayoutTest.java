package padwright.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;
import java.util.Set;

import org.eclipse.core.resources.IResource;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Text;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import padwright.workbench.editor.PlanEditor;
import padwright.workbench.inspector.InspectorView;
import padwright.workbench.views.KeyTableView;
import padwright.workbench.views.LayoutView;

/** Instruments drawn in the window, told by the text that comes of it. */
class LayoutTest {

	private static final String MINE = "systems/mine.keys";
	private static final String TUBE = "unit mm\n\nsystem Mine {\n\tjoint body long 300 bore 19\n}\n";
	private static final String UNDO = "org.eclipse.ui.edit.undo";
	private static final String REDO = "org.eclipse.ui.edit.redo";

	@TempDir
	private Path folder;
	private Driver driver;

	@BeforeEach
	void openShop() throws Exception {
		driver = Driver.withExampleShop(folder);
		Files.writeString(driver.path("systems/boehm.keys").resolveSibling("mine.keys"), TUBE);
		driver.file(MINE).refreshLocal(IResource.DEPTH_ZERO, null);
	}

	@AfterEach
	void closeShop() throws Exception {
		driver.close();
	}

	@Test
	void threeKeysByMouse() throws Exception {
		Drawing mine = Drawing.of(driver, MINE, "Mine");
		for (int place = 120; place <= 180; place += 30) {
			mine.tool("Key");
			mine.click(place, 0);
			mine.expect("at " + place);
		}
		mine.tool("Touch");
		mine.click(120, 60);
		mine.expect("touch T1");
		mine.drag(150, 0, 152.5, 0);
		mine.expect("key K2 open hole 13 cup 16.5 at 152.5");
		mine.tool("Coupling");
		mine.drag(120, 0, 152.5, 0);
		mine.choose("closes");
		mine.expect("closes K2");
		mine.tool("Coupling");
		mine.drag(120, 60, 120, 0);
		mine.expect("by T1");
		assertEquals("""
				unit mm

				system Mine {
					joint body long 300 bore 19
					touch T1 at 120 around 60
					key K1 open by T1 closes K2 hole 13 cup 16.5 at 120
					key K2 open hole 13 cup 16.5 at 152.5
					key K3 open hole 13 cup 16.5 at 180
				}
				""", mine.text());
	}

	@Test
	void anInheritedFluteIsChangedByMouseAndTakenBack() throws Exception {
		Drawing flute = Drawing.of(driver, "systems/boehm-b-foot.keys", "BoehmB");
		String before = flute.text();
		Driver.waitFor("what is inherited", () -> flute.layout().editing().layout().item("key:A").isPresent());
		flute.drag(180 + 185, 0, 180 + 187.5, 0);
		flute.expect("\tchange A at 187.5\n");
		assertEquals(before, flute.text().replace("\tchange A at 187.5\n", ""));
		flute.contextMenu("As inherited");
		Driver.waitFor("as inherited", () -> flute.layout().editing().chosen().get(0).origin().name()
				.equals("INHERITED"));
		assertEquals(before, flute.text());
	}

	@Test
	void threeKeysByKeyboardAlone() throws Exception {
		Drawing mine = Drawing.of(driver, MINE, "Mine");
		mine.key('k');
		mine.enter();
		mine.expect("key K1 open hole 13 cup 16.5 at 150");
		for (int key = 2; key <= 3; key++) {
			mine.key('k');
			mine.enter();
			mine.expect("key K" + key);
		}
		mine.key('\0', SWT.ARROW_RIGHT, SWT.MOD1 | SWT.MOD2);
		mine.expect("cup 16.5 at 191");
		mine.key('\0', SWT.ARROW_DOWN, SWT.MOD1);
		mine.expect("at 191 around 1");
		mine.key('c');
		mine.key('\0', SWT.ARROW_LEFT, 0);
		mine.enter();
		mine.choose("opens");
		mine.expect("key K3 open opens K2");
		mine.key('\0', SWT.DEL, 0);
		mine.expect("key K1 open hole 13 cup 16.5 at 150\n\tkey K2 open hole 13 cup 16.5 at 170\n}");
		Driver.command(UNDO);
		mine.expect("opens K");
		Driver.command(UNDO);
		Driver.command(REDO);
		mine.expect("opens K");
	}

	@Test
	void anInheritedFluteIsChangedByKeyboardAndTakenBack() throws Exception {
		Drawing flute = Drawing.of(driver, "systems/boehm-b-foot.keys", "BoehmB");
		String before = flute.text();
		Driver.waitFor("what is inherited", () -> flute.layout().editing().layout().item("key:A").isPresent());
		flute.tabTo("key:A");
		flute.enter();
		for (String place : new String[] {"186", "187"}) {
			flute.key('\0', SWT.ARROW_RIGHT, SWT.MOD1 | SWT.MOD2);
			flute.expect("\tchange A at " + place + "\n");
		}
		for (String place : new String[] {"187.1", "187.2", "187.3", "187.4", "187.5"}) {
			flute.key('\0', SWT.ARROW_RIGHT, SWT.MOD1);
			flute.expect("\tchange A at " + place + "\n");
		}
		InspectorView inspector = (InspectorView) Driver.view(InspectorView.ID);
		Driver.waitFor("the form", () -> inspector.title().equals("Key A") && inspector.isCurrent());
		Windows fields = Windows.main();
		fields.type("Closes 1: Ratio", "0.75");
		Driver.ui(() -> {
			fields.named(Text.class, "Closes 1: Ratio").notifyListeners(SWT.DefaultSelection, new Event());
			return null;
		});
		flute.expect("\tchange A closes As through screw \"UNM 1.00\" ratio 0.75 at 187.5\n");
		Driver.view(LayoutView.ID);
		flute.key('i');
		Driver.waitFor("as inherited", () -> Driver.document(flute.editor()).get().equals(before));
	}

	@Test
	void brokenTextKeepsTheLastGoodDrawing() throws Exception {
		Drawing mine = Drawing.of(driver, MINE, "Mine");
		mine.key('k');
		mine.enter();
		mine.expect("key K1");
		PlanEditor editor = driver.open(MINE);
		Driver.replace(editor, "long 300", "long long 300");
		Driver.waitFor("the fault", () -> mine.layout().editing().layout().fault().isPresent());
		assertTrue(Driver.ui(() -> mine.layout().editing().layout().item("key:K1").isPresent()));
		String broken = mine.text();
		Driver.ui(() -> {
			mine.layout().editing().delete();
			return null;
		});
		assertEquals(broken, mine.text());
		Driver.replace(editor, "long long 300", "long 310");
		Driver.waitFor("no fault", () -> mine.layout().editing().layout().fault().isEmpty());
	}

	@Test
	void whatIsInheritedIsRenamedWhereItComesFrom() throws Exception {
		Drawing flute = Drawing.of(driver, "systems/boehm-b-foot.keys", "BoehmB");
		Driver.ui(() -> {
			flute.layout().editing().select(Set.of("key:A"));
			flute.layout().rename();
			return null;
		});
		Driver.ui(() -> {
			Text name = Arrays.stream(flute.layout().canvas().getChildren()).filter(Text.class::isInstance)
					.map(Text.class::cast).findFirst().orElseThrow();
			name.setText("Aa");
			Driver.display().asyncExec(() -> name.notifyListeners(SWT.DefaultSelection, new Event()));
			return null;
		});
		Driver.answerDialog("Rename", "OK");
		Driver.waitFor("the new name", () -> flute.layout().editing().layout().item("key:Aa").isPresent());
		assertTrue(Files.readString(driver.path("systems/boehm.keys")).contains("key Aa open by L2"));
	}

	@Test
	void theSystemOfAPlanIsDrawnInItsOwnText() throws Exception {
		driver.open("plans/first.plan");
		LayoutView view = (LayoutView) Driver.view(LayoutView.ID);
		Driver.waitFor("the system of the plan", () -> view.control().editing().layout().item("key:A").isPresent());
		Driver.ui(() -> {
			view.control().editing().select(Set.of("key:A"));
			view.control().editing().nudge(5, 0);
			return null;
		});
		PlanEditor system = driver.open("systems/boehm.keys");
		assertTrue(Driver.text(system).contains("rise 3 at 185.5\n"), Driver.text(system));
	}

	private static final String BOTH = TUBE.replace("}", """
				key K1 open hole 13 cup 16.5 at 150
			}

			plan Job for Mine with Bench {
				read at 12 3 6 9
				key K1 felt . . . . thou remark "0"
			}
			""");

	/** In turn in the drawing, the form, the table and the text. */
	@Test
	void fiftyMixedEditsAreUndoneToTheFirstByte() throws Exception {
		Files.writeString(driver.path(MINE), BOTH);
		driver.file(MINE).refreshLocal(IResource.DEPTH_ZERO, null);
		InspectorView inspector = (InspectorView) Driver.view(InspectorView.ID);
		Drawing mine = Drawing.of(driver, MINE, "Mine");
		PlanEditor editor = driver.open(MINE);
		String first = Driver.text(editor);
		Windows fields = Windows.main();
		for (int round = 0; round < 13; round++) {
			Driver.ui(() -> {
				mine.layout().editing().select(Set.of("key:K1"));
				mine.layout().editing().nudge(10, 0);
				return null;
			});
			mine.expect("at " + (151 + round) + "\n");
			String remark = "remark \"" + (round + 1) + "\"";
			Driver.replace(editor, "remark \"" + round, "remark \"" + (round + 1));
			mine.expect(remark);
			Driver.waitFor("the form", () -> inspector.title().equals("Key K1") && inspector.isCurrent());
			fields.type("Play", "0." + (10 + round));
			Driver.ui(() -> {
				fields.named(Text.class, "Play").notifyListeners(SWT.DefaultSelection, new Event());
				return null;
			});
			mine.expect("play 0." + (10 + round));
			typeReadings((round + 1) + " . . .");
			mine.expect("felt " + (round + 1) + " . . . thou");
		}
		Driver.view(LayoutView.ID);
		String last = mine.text();
		int steps = 0;
		while (!mine.text().equals(first) && steps < 60) {
			Driver.command(UNDO);
			steps++;
		}
		assertEquals(first, mine.text());
		assertEquals(52, steps);
		for (int step = 0; step < steps; step++) {
			Driver.command(REDO);
		}
		assertEquals(last, mine.text());
	}

	private static void typeReadings(String readings) throws Exception {
		KeyTableView view = (KeyTableView) Driver.view(KeyTableView.ID);
		Driver.waitFor("the row", () -> view.control().table().getItemCount() == 1);
		Driver.waitFor("a cell that takes what is typed", () -> typeIntoCell(view.control().table(), readings));
	}

	/** Whether there was one: a table that is shown anew just then closes it. */
	private static boolean typeIntoCell(Table rows, String readings) {
		rows.setSelection(0);
		Event open = new Event();
		open.keyCode = SWT.F2;
		rows.notifyListeners(SWT.KeyDown, open);
		Optional<Text> cell = Arrays.stream(rows.getChildren()).filter(Text.class::isInstance).map(Text.class::cast)
				.findFirst();
		cell.ifPresent(text -> {
			text.setText(readings);
			Event enter = new Event();
			enter.detail = SWT.TRAVERSE_RETURN;
			enter.doit = true;
			text.notifyListeners(SWT.Traverse, enter);
		});
		return cell.isPresent();
	}
}
