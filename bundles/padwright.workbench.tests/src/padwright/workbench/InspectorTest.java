package padwright.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.texteditor.ITextEditorActionConstants;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

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
		fields.type("Rim sinks in", "2.5 thou");
		notify(fields.field(Text.class, "Rim sinks in"), SWT.DefaultSelection);
		assertEquals(before.replaceFirst("sinks 2 thou", "sinks 2.5 thou"), Driver.text(editor));
		Driver.ui(() -> {
			editor.getAction(ITextEditorActionConstants.UNDO).run();
			return null;
		});
		assertEquals(before, Driver.text(editor));
		Driver.waitFor("the old figure",
				() -> fields.named(Text.class, "Rim sinks in").getText().equals("2 thou"));
	}

	@Test
	void aFaultIsShownAndNothingIsWritten() throws Exception {
		PlanEditor editor = at(STOCK, "pad Rigid", "Pad Rigid");
		String before = Driver.text(editor);
		fields.type("Thickness", "thick");
		assertFalse(Driver.ui(inspector::faults).isEmpty());
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
}
