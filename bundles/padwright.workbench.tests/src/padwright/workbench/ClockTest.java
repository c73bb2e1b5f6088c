package padwright.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;

import org.eclipse.jface.text.ITextSelection;
import org.eclipse.ui.texteditor.ITextEditorActionConstants;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import padwright.views.canvas.RimClockControl;
import padwright.workbench.bench.Bench;
import padwright.workbench.editor.PlanEditor;
import padwright.workbench.views.RimClockView;

/** From readings to shims without touching the text: the clock writes it. */
class ClockTest {

	private static final String PLAN = "plans/first.plan";
	private static final String ROW = "\tkey Ds empty 15 15 15 15 15 15 15 15 felt . . 1 1 1.5 1 0.5 .";

	@TempDir
	private Path folder;
	private Driver driver;
	private PlanEditor editor;
	private RimClockControl clock;

	@BeforeEach
	void openPlan() throws Exception {
		driver = Driver.withExampleShop(folder);
		editor = driver.open(PLAN);
		clock = ((RimClockView) Driver.view(RimClockView.ID)).control();
	}

	@AfterEach
	void closeShop() throws Exception {
		driver.close();
	}

	private static Bench bench() {
		return Bench.of(Driver.page().getWorkbenchWindow());
	}

	private void choose(String key) throws Exception {
		Driver.waitFor("the plan on the bench", () -> bench().shown().plan().isPresent());
		Driver.ui(() -> {
			bench().choose(key);
			return null;
		});
		Driver.waitFor("the key", () -> Driver.isEnabled(clock, "Solve"));
	}

	@Test
	void typedReadingsSolvedAppliedAndUndone() throws Exception {
		Driver.replace(editor, ROW, "\tkey Ds empty 15 15 15 15 15 15 15 15");
		Driver.waitFor("the row read", () -> bench().shown().plan()
				.filter(plan -> plan.text().contains("key Ds empty 15 15 15 15 15 15 15 15\n")).isPresent());
		choose("Ds");
		for (String reading : new String[] {".", "5", "1", "1", "6", "1", "0.5", "."}) {
			Driver.typeLine(clock.canvas(), reading);
		}
		Driver.waitFor("eight readings", () -> text().contains("felt . 0.5 1 1 1.5 1 0.5 .\n"));
		String read = Driver.text(editor);
		Driver.waitFor("the readings on the bench", () -> bench().shown().plan()
				.filter(plan -> plan.text().equals(read)).isPresent());
		Driver.pressButton(clock, "Solve");
		Driver.waitFor("a proposal", () -> Driver.isEnabled(clock, "Apply"));
		assertEquals(read, Driver.text(editor), "a proposal is only shown");
		Driver.pressButton(clock, "Apply");
		Driver.waitFor("the answer", () -> text().contains("felt . 0.5 1 1 1.5 1 0.5 . "));
		Driver.ui(() -> {
			editor.getAction(ITextEditorActionConstants.UNDO).run();
			return null;
		});
		assertEquals(read, Driver.text(editor));
	}

	private String text() {
		return Driver.document(editor).get();
	}

	@Test
	void theKeyAtTheCaretIsOnTheBench() throws Exception {
		Driver.waitFor("the plan on the bench", () -> bench().shown().plan().isPresent());
		Driver.ui(() -> {
			editor.selectAndReveal(text().indexOf("key F ") + 2, 0);
			return null;
		});
		Driver.waitFor("key F", () -> bench().shown().key().filter("F"::equals).isPresent());
		Driver.ui(() -> {
			bench().choose("Fs");
			return null;
		});
		assertTrue(Driver.ui(() -> caretLine()).contains("key Fs "));
	}

	private String caretLine() throws Exception {
		var document = Driver.document(editor);
		int caret = ((ITextSelection) editor.getSelectionProvider().getSelection()).getOffset();
		var line = document.getLineInformationOfOffset(caret);
		return document.get(line.getOffset(), line.getLength());
	}
}
