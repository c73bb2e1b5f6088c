package padwright.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;

import org.eclipse.core.runtime.preferences.InstanceScope;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.texteditor.ITextEditorActionConstants;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInfo;
import org.junit.jupiter.api.io.TempDir;

import padwright.views.canvas.BenchControl;
import padwright.workbench.bench.Bench;
import padwright.workbench.editor.PlanEditor;
import padwright.workbench.indicator.PseudoTerminal;
import padwright.workbench.prefs.Preferences;

/** One key after the other on the whole screen, by the numeric keypad alone. */
class BenchModeTest {

	private static final String INDICATOR = "indicator";
	private static final String PLAN = "plans/first.plan";
	private static final String FS = "key Fs empty 15 15 15 15 14.5 15 15.5 15";
	private static final String F = "key F empty 15 15 15 15 15 15 15 15";

	@TempDir
	private Path folder;
	private Driver driver;
	private PlanEditor editor;
	private Shell shell;
	private BenchControl control;

	@BeforeEach
	void openPlan(TestInfo test) throws Exception {
		if (test.getTags().contains(INDICATOR)) {
			InstanceScope.INSTANCE.getNode(Preferences.NODE).put("benchMode.indicator.port", port().toString());
		}
		driver = Driver.withExampleShop(folder);
		editor = driver.open(PLAN);
		Driver.replace(editor, FS + " felt . . 0.5 . . 0.5 1 0.5", FS);
		Driver.replace(editor, F + " felt . . . . . . . .", F);
		choose("Fs");
		Driver.command("padwright.workbench.benchMode");
		Driver.waitFor("bench mode", () -> find().isPresent());
		shell = Driver.ui(() -> find().orElseThrow());
		control = Driver.ui(() -> (BenchControl) shell.getChildren()[0]);
	}

	@AfterEach
	void closeShop() throws Exception {
		Driver.ui(() -> {
			find().ifPresent(Shell::close);
			InstanceScope.INSTANCE.getNode(Preferences.NODE).clear();
			return null;
		});
		driver.close();
	}

	private static Optional<Shell> find() {
		return Arrays.stream(Driver.display().getShells()).filter(one -> one.getText().equals("Bench Mode")).findFirst();
	}

	private static Bench bench() {
		return Bench.of(Driver.page().getWorkbenchWindow());
	}

	private String text() {
		return Driver.document(editor).get();
	}

	/** As the numeric keypad sends them. */
	private void press(String strokes) throws Exception {
		for (char stroke : strokes.toCharArray()) {
			press(stroke, SWT.KEYCODE_BIT | stroke);
		}
	}

	private void press(char character, int code) throws Exception {
		Driver.ui(() -> {
			Event key = new Event();
			key.character = character;
			key.keyCode = code;
			control.canvas().notifyListeners(SWT.KeyDown, key);
			return null;
		});
	}

	@Test
	void eightHoursOfTwoKeysInAsManyStrokesAndNotOneClick() throws Exception {
		press("..5..515" + ".......1");
		Driver.waitFor("both rows", () -> text().contains(FS + " felt . . 0.5 . . 0.5 1 0.5\n")
				&& text().contains(F + " felt . . . . . . . 1\n"));
		Driver.ui(() -> {
			editor.getAction(ITextEditorActionConstants.UNDO).run();
			return null;
		});
		assertTrue(Driver.text(editor).contains(FS + " felt . . 0.5 . . 0.5 1 0.5\n"), "each key has steps of its own");
	}

	@Test
	void theAnswerIsNotedWithOneStrokeAndEscapeLeaves() throws Exception {
		press("..5..515*");
		Driver.waitFor("both rows", () -> text().contains(F + " felt . . . . . . . .\n"));
		picturesForPeopleToLookAt();
		choose("F");
		Driver.waitFor("an answer", () -> control.label().equals("F") && says("PLACED"));
		press('\r', SWT.KEYPAD_CR);
		Driver.waitFor("the answer", () -> text().contains(F + " felt . . . . . . . . shim none\n"));
		press('\u001b', SWT.ESC);
		Driver.waitFor("the end of bench mode", () -> find().isEmpty());
		assertEquals("F", Driver.ui(() -> bench().shown().key().orElseThrow()), "the window is at the key of before");
	}

	/** Whether the step is offered. */
	private boolean says(String step) {
		return control.offered().filter(step::equals).isPresent();
	}

	@Test
	void whatIsTypedWhileTheTextIsHalfTypedIsWrittenInTheEnd() throws Exception {
		Driver.ui(() -> {
			Driver.document(editor).replace(text().indexOf("regulate"), 0, "key B em");
			return null;
		});
		press("..5.");
		Driver.waitFor("four readings", () -> text().contains(FS + " felt . . 0.5 .\n"));
		assertTrue(Driver.text(editor).contains("key B em"));
	}

	/** While a text is read the key at the caret would be taken again. */
	private void choose(String key) throws Exception {
		Driver.waitFor("the text on the bench",
				() -> bench().shown().plan().filter(plan -> plan.text().equals(text())).isPresent());
		Driver.ui(() -> {
			bench().choose(key);
			return null;
		});
	}

	@Test
	@Tag(INDICATOR)
	void anIndicatorAtASerialPortIsReadAndUnpluggingItLosesNothing() throws Exception {
		Driver.waitFor("what is said of the port", () -> shows("no indicator at " + port()));
		try (PseudoTerminal indicator = new PseudoTerminal(port())) {
			Driver.waitFor("the indicator", () -> !shows("no indicator") && shows("indicator at " + port()));
			indicator.send("0.2\r\n0.0001\r\n0.5\r\n");
			Driver.waitFor("three readings", () -> text().contains(FS + " felt . . 0.5\n"));
		}
		Driver.waitFor("the end of the port", () -> shows("no indicator at " + port()));
		press(".");
		Driver.waitFor("a reading by hand", () -> text().contains(FS + " felt . . 0.5 .\n"));
		try (PseudoTerminal indicator = new PseudoTerminal(port())) {
			Driver.waitFor("the indicator again", () -> !shows("no indicator") && shows("indicator at"));
			indicator.send("+0.0127 mm\n");
			Driver.waitFor("five readings", () -> text().contains(FS + " felt . . 0.5 . 0.5\n"));
		}
	}

	private Path port() {
		return folder.resolve("port");
	}

	private boolean shows(String words) {
		return control.indicator().contains(words);
	}

	private void picturesForPeopleToLookAt() throws Exception {
		choose("Fs");
		Driver.waitFor("an answer", () -> control.label().equals("F\u266f") && says("PLACED"));
		for (int[] size : new int[][] {{1280, 720}, {1920, 1080}}) {
			Driver.ui(() -> {
				shell.setFullScreen(false);
				shell.setBounds(0, 0, size[0], size[1]);
				return null;
			});
			ScreensTest.settle();
			ScreensTest.picture(control, "bench-mode-" + size[1]);
		}
	}
}
