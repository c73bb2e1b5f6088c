package padwright.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.Set;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import padwright.views.canvas.FingeringControl;
import padwright.workbench.editor.PlanEditor;
import padwright.workbench.views.FingeringView;

/** Touches are pressed, what moves is seen, and it is written down. */
class FingeringTest {

	@TempDir
	private Path folder;
	private Driver driver;
	private PlanEditor editor;
	private FingeringControl fingerings;

	@BeforeEach
	void openFlute() throws Exception {
		driver = Driver.withExampleShop(folder);
		editor = driver.open("systems/boehm.keys");
		FingeringView view = (FingeringView) Driver.view(FingeringView.ID);
		fingerings = Driver.ui(view::control);
		Driver.waitFor("the touches", () -> !fingerings.session().touches().isEmpty());
	}

	@AfterEach
	void closeShop() throws Exception {
		driver.close();
	}

	private void press(String touch, int mask) throws Exception {
		Driver.ui(() -> {
			Button button = (Button) find(fingerings, touch);
			Event event = new Event();
			event.stateMask = mask;
			button.notifyListeners(SWT.Selection, event);
			return null;
		});
	}

	private static Control find(Composite within, String touch) {
		for (Control child : within.getChildren()) {
			if (child instanceof Button button && button.getText().equals(touch)) {
				return button;
			}
			Control inner = child instanceof Composite row ? find(row, touch) : null;
			if (inner != null) {
				return inner;
			}
		}
		return null;
	}

	private void key(char character, int code) throws Exception {
		Driver.ui(() -> {
			Event event = new Event();
			event.character = character;
			event.keyCode = code;
			fingerings.canvas().notifyListeners(SWT.KeyDown, event);
			return null;
		});
	}

	private String status() throws Exception {
		return Driver.ui(() -> Arrays.stream(fingerings.getChildren()).filter(Label.class::isInstance)
				.map(child -> ((Label) child).getText()).reduce("", String::concat));
	}

	@Test
	void touchesArePressedWithTheMouse() throws Exception {
		press("L2", 0);
		assertEquals(Set.of("touch:L2"), Driver.ui(() -> fingerings.session().motion().pressed()));
		assertEquals(Set.of("key:A", "key:As"), Driver.ui(() -> fingerings.session().motion().moved()));
		assertTrue(Driver.ui(() -> fingerings.session().motion().shut().contains("key:As")));
		press("L2", 0);
		assertTrue(Driver.ui(() -> fingerings.session().motion().moved().isEmpty()));
	}

	@Test
	void touchesArePressedAndWrittenDownWithTheKeyboard() throws Exception {
		String before = Driver.text(editor);
		for (String touch : new String[] {"T", "L1", "R3"}) {
			Driver.ui(() -> {
				fingerings.canvas().setFocus();
				fingerings.canvas().setFocusOn(java.util.Optional.of("touch:" + touch));
				return null;
			});
			key(' ', ' ');
		}
		assertEquals(Set.of("touch:T", "touch:L1", "touch:R3"), Driver.ui(() -> fingerings.session().motion().pressed()));
		Driver.ui(() -> {
			Text note = texts(fingerings);
			note.setText("C8");
			note.notifyListeners(SWT.DefaultSelection, new Event());
			return null;
		});
		Driver.waitFor("the note", () -> Driver.document(editor).get().contains("\tnote C8 : T L1 R3\n"));
		assertEquals(before, Driver.text(editor).replace("\tnote C8 : T L1 R3\n", ""));
		Driver.waitFor("what is missing now", () -> fingerings.session().missing().contains("B7"));
		assertTrue(status().contains("B7"), status());
	}

	private static Text texts(Composite within) {
		return Arrays.stream(within.getChildren()).filter(Composite.class::isInstance)
				.flatMap(row -> Arrays.stream(((Composite) row).getChildren())).filter(Text.class::isInstance)
				.map(Text.class::cast).findFirst().orElseThrow();
	}

	@Test
	void allNotesAreWalkedThroughWithWhatMoves() throws Exception {
		int notes = Driver.ui(() -> fingerings.session().fingerings().size());
		Driver.pressButton(fingerings, "Next note");
		assertTrue(status().contains("C4"), status());
		assertTrue(Driver.ui(() -> ((Button) find(fingerings, "L1")).getSelection()));
		for (int step = 0; step < notes; step++) {
			Driver.pressButton(fingerings, "Next note");
			assertTrue(Driver.ui(() -> fingerings.session().contradictions()).isEmpty(), status());
		}
		assertTrue(status().contains("C4"), status());
		Driver.pressButton(fingerings, "Note before");
		assertTrue(Driver.ui(() -> fingerings.session().note()).isPresent());
	}
}
