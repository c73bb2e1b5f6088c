package padwright.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.texteditor.ITextEditorActionConstants;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import padwright.model.keysystem.KeySystem;
import padwright.model.keysystem.Titled;
import padwright.views.canvas.SceneCanvas;
import padwright.workbench.bench.Bench;
import padwright.workbench.bench.Workpiece;
import padwright.workbench.controls.Named;
import padwright.workbench.editor.PlanEditor;
import padwright.workbench.inspector.InspectorView;

/** The form of what is at the caret. */
class InspectorTest {

	private static final String STOCK = "stock/bench.stock";
	private static final String PLAN = "plans/first.plan";

	@TempDir
	private Path folder;
	private Driver bench;
	private InspectorView inspector;
	private Windows fields;

	@BeforeEach
	void openShop() throws Exception {
		bench = Driver.withExampleShop(folder);
		inspector = (InspectorView) Driver.view(InspectorView.ID);
		fields = Windows.main();
	}

	@AfterEach
	void closeShop() throws Exception {
		bench.close();
	}

	private PlanEditor at(String document, String place, String title) throws Exception {
		PlanEditor editor = bench.open(document);
		Driver.ui(() -> {
			editor.selectAndReveal(Driver.document(editor).get().indexOf(place) + place.length(), 0);
			return null;
		});
		Driver.waitFor(title, () -> inspector.title().equals(title));
		return editor;
	}

	/** What is wrong with a text as soon as it is typed: an answer from elsewhere may show the field anew later. */
	private List<String> faultsOf(String field, String text) throws Exception {
		return Driver.ui(() -> {
			fields.named(Text.class, field).setText(text);
			return inspector.faults();
		});
	}

	private static void notify(Control control, int event) throws Exception {
		Driver.ui(() -> {
			control.notifyListeners(event, new Event());
			return null;
		});
	}

	@Test
	void aTypedFigureIsWrittenWithEnterAndUndoneInOneStep() throws Exception {
		PlanEditor editor = at(STOCK, "pad Rigid", "Pad Rigid");
		String before = Driver.text(editor);
		fields.enter("Rim sinks in", "2.5 thou");
		assertEquals(before.replaceFirst("sinks 2 thou", "sinks 2.5 thou"), Driver.text(editor));
		Driver.ui(() -> {
			editor.getAction(ITextEditorActionConstants.UNDO).run();
			return null;
		});
		assertEquals(before, Driver.text(editor));
		Driver.waitFor("the old figure",
				() -> fields.named(Text.class, "Rim sinks in").getText().equals("2 thou"));
	}

	/** An answer that comes while a figure is half typed takes nothing away, wherever the focus is. */
	@Test
	void whatIsHalfTypedStaysWhileTheTextIsReadAnew() throws Exception {
		PlanEditor editor = at(STOCK, "pad Rigid", "Pad Rigid");
		fields.type("Rim sinks in", "2.5 th");
		Driver.ui(() -> {
			Driver.document(editor).replace(Driver.document(editor).getLength(), 0, "\n");
			return null;
		});
		Driver.waitFor("the new text", inspector::isCurrent);
		assertEquals("2.5 th", Driver.ui(() -> fields.named(Text.class, "Rim sinks in").getText()));
	}

	@Test
	void aFaultIsShownAndNothingIsWritten() throws Exception {
		PlanEditor editor = at(STOCK, "pad Rigid", "Pad Rigid");
		String before = Driver.text(editor);
		assertFalse(faultsOf("Thickness", "thick").isEmpty());
		notify(fields.field(Text.class, "Thickness"), SWT.DefaultSelection);
		assertEquals(before, Driver.text(editor));
		fields.type("Thickness", "98 thou");
		assertTrue(Driver.ui(inspector::faults).isEmpty());
	}

	@Test
	void whatIsNotSaidYetIsAddedAtItsPlace() throws Exception {
		PlanEditor editor = at(PLAN, "key Ds", "Key Ds");
		fields.choose("Old pad", "torn");
		assertTrue(Driver.text(editor).contains("\tkey Ds found torn empty 15 15 15 15 15 15 15 15 felt . . 1 1 1.5 1 0.5 .\n"));
		assertTrue(Driver.ui(() -> fields.named(Combo.class, "Old pad").getText()).equals("torn"));
	}

	private void pick(String clock, String hour) throws Exception {
		Driver.ui(() -> {
			SceneCanvas canvas = fields.all(SceneCanvas.class).stream().filter(each -> each.name().equals(clock)).findFirst()
					.orElseThrow(() -> new AssertionError(clock));
			canvas.setFocusOn(Optional.of("hour:" + hour));
			Event space = new Event();
			space.character = ' ';
			space.keyCode = ' ';
			canvas.notifyListeners(SWT.KeyDown, space);
			return null;
		});
	}

	@Test
	void hoursAreChosenOnASmallClock() throws Exception {
		PlanEditor editor = at(PLAN, "key Ds", "Key Ds");
		String before = Driver.text(editor);
		pick("Nick at, on the clock", "4.5");
		assertEquals(before.replace("key Ds empty", "key Ds nick at 4.5 empty"), Driver.text(editor));
		Driver.waitFor("the hour", () -> fields.named(Text.class, "Nick at").getText().equals("4.5"));
		pick("Nick at, on the clock", "1");
		Driver.waitFor("both hours", () -> fields.named(Text.class, "Nick at").getText().equals("4.5 1"));
		pick("Nick at, on the clock", "1");
		Driver.waitFor("one hour", () -> fields.named(Text.class, "Nick at").getText().equals("4.5"));
		pick("Nick at, on the clock", "4.5");
		assertEquals(before, Driver.text(editor));
	}

	@Test
	void readingsAreAGridOfHours() throws Exception {
		PlanEditor editor = at(PLAN, "key Ds", "Key Ds");
		String before = Driver.text(editor);
		fields.enter("Round 1 at 3 o'clock", "2");
		assertEquals(before.replace("felt . . 1 1 1.5", "felt . . 2 1 1.5"), Driver.text(editor));
		Driver.waitFor("the new text", inspector::isCurrent);
		assertFalse(faultsOf("Round 1 at 3 o'clock", "thick").isEmpty());
		fields.enter("Empty cup at 10.5 o'clock", "14");
		assertTrue(Driver.text(editor).contains("key Ds empty 15 15 15 15 15 15 15 14 felt"));
	}

	@Test
	void piecesAndLayersAreRows() throws Exception {
		PlanEditor stock = at(STOCK, "pad Rigid", "Pad Rigid");
		String before = Driver.text(stock);
		fields.enter("Layers 1: Thickness", "33 thou");
		assertEquals(before.replace("base acetal 32 thou\n\t\tface microfibre 65", "base acetal 33 thou\n\t\tface microfibre 65"),
				Driver.text(stock));
		assertNotEquals(before, Driver.text(stock));
		Driver.waitFor("the new layer", () -> fields.named(Text.class, "Layers 1: Thickness").getText().equals("33 thou"));
		Driver.waitFor("the new text", inspector::isCurrent);
		press("Move Layers 2 up");
		assertTrue(Driver.text(stock).contains("face microfibre 65 thou\n\t\tbase acetal 33 thou"));
		PlanEditor plan = at("plans/old-flute.plan", "key F found", "Key F");
		String row = Driver.text(plan);
		assertEquals(1, Driver.ui(this::pieces));
		press("Another like Round 1: Partial shims 1");
		Driver.waitFor("one piece more", () -> pieces() == 2);
		assertEquals(row.replace("shim 1 from 7 to 9\n", "shim 1 from 7 to 9, 1 from 7 to 9\n"), Driver.text(plan));
		Driver.waitFor("the new text", inspector::isCurrent);
		fields.choose("Round 1: Partial shims 2: To", "9.5");
		Driver.waitFor("the other end", () -> Driver.document(plan).get().contains("1 from 7 to 9, 1 from 7 to 9.5"));
		Driver.waitFor("the form of that", () -> fields.named(Combo.class, "Round 1: Partial shims 2: To").getText()
				.equals("9.5"));
		Driver.waitFor("the new text", inspector::isCurrent);
		press("Take Round 1: Partial shims 2 out");
		Driver.waitFor("as before", () -> pieces() == 1);
		assertEquals(row, Driver.text(plan));
	}

	private int pieces() {
		return (int) fields.all(Text.class).stream().map(Named::of).filter(name -> name.startsWith("Round 1: Partial shims")
				&& name.endsWith("Thickness")).count();
	}

	private void press(String button) throws Exception {
		notify(fields.field(Button.class, button), SWT.Selection);
	}

	/** A bore that a heir changes is said whole in its change. */
	@Test
	void theListOfAnInheritedJointIsChangedHere() throws Exception {
		PlanEditor editor = inherited(base -> base.getJoints().get(0));
		Driver.waitFor("the joint", () -> inspector.title().equals("Joint head"));
		assertTrue(Driver.ui(inspector::owner).matches("boehm.keys, line \\d+;.*"));
		fields.enter("Bore 1: Diameter", "18.2");
		assertTrue(Driver.text(editor).contains("\tchange joint head bore 18.2 at 30, 19 at 130\n"), Driver.text(editor));
	}

	/** Chooses something that the flute with the B foot inherits, as a drawing does. */
	private PlanEditor inherited(Function<KeySystem, Titled> choice) throws Exception {
		PlanEditor editor = bench.open("systems/boehm-b-foot.keys");
		Bench onBench = Driver.ui(() -> Bench.of(Driver.page().getWorkbenchWindow()));
		Driver.waitFor("the system", () -> onBench.shown().work().flatMap(Workpiece::keySystem)
				.filter(system -> system.getName().equals("BoehmB")).isPresent());
		Driver.ui(() -> {
			onBench.choosePart(choice.apply(onBench.shown().work().orElseThrow().keySystem().orElseThrow().getBase()));
			return null;
		});
		return editor;
	}

	/** A coupling that a heir changes is said in its change, which the form goes on with, until it is taken back. */
	@Test
	void everyClauseOfAnInheritedCouplingIsChangedHereAndTakenBack() throws Exception {
		PlanEditor editor = inherited(base -> base.getKeys().stream()
				.filter(key -> key.getName().equals("A")).findFirst().orElseThrow());
		String before = Driver.text(editor);
		Driver.waitFor("the key", () -> inspector.title().equals("Key A"));
		fields.enter("Closes 1: Ratio", "0.75");
		Driver.waitFor("the change", () -> Driver.document(editor).get()
				.contains("\tchange A closes As through screw \"UNM 1.00\" ratio 0.75\n"));
		Driver.waitFor("the form of the change", () -> inspector.isCurrent()
				&& inspector.owner().contains("boehm-b-foot.keys"));
		fields.choose("Closes 1: Adjuster: Through", "felt");
		Driver.waitFor("what it is through", () -> Driver.document(editor).get()
				.contains("\tchange A closes As through felt \"UNM 1.00\" ratio 0.75\n"));
		Driver.waitFor("the new text", inspector::isCurrent);
		press("As inherited");
		Driver.waitFor("as before", () -> Driver.document(editor).get().equals(before));
	}
}
