package padwright.views.canvas;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Shell;
import org.junit.jupiter.api.Test;

import padwright.language.edit.TextEdit;
import padwright.views.Bench;
import padwright.views.Palette;
import padwright.views.clock.ClockState;
import padwright.views.map.KeyMapState;
import padwright.views.map.KeyState;
import padwright.views.map.StateMarks;
import padwright.views.section.CupSectionState;

/** Needs a display. */
class ControlsTest {

	private static final String ROWS = ""
			+ "key A empty 15 15 15 15 felt . 0.5 . 1 shim 0.5 from 8 to 10\nkey B felt . . . .";

	private static Set<Integer> colours(Shell shell, Control control) {
		OnDisplay.open(shell);
		Image image = new Image(shell.getDisplay(), 600, 400);
		GC gc = new GC(image);
		control.print(gc);
		gc.dispose();
		ImageData data = image.getImageData();
		Set<Integer> colours = new HashSet<>();
		for (int x = 0; x < data.width; x++) {
			for (int y = 0; y < data.height; y++) {
				colours.add(data.getPixel(x, y));
			}
		}
		image.dispose();
		return colours;
	}

	@Test
	void keysAreChosenWithKeyboardAlone() {
		Bench bench = new Bench(ROWS);
		List<List<String>> chosen = new ArrayList<>();
		List<String> opened = new ArrayList<>();
		List<String> jumps = new ArrayList<>();
		OnDisplay.run(shell -> {
			KeyMap map = new KeyMap(shell, Palette.light());
			map.onSelect(chosen::add);
			map.onOpen(opened::add);
			map.onJump(jumps::add);
			map.show(KeyMapState.of(bench.plan(), bench.findings()), Set.of());
			OnDisplay.open(shell);
			traverse(map.canvas(), SWT.TRAVERSE_TAB_NEXT);
			OnDisplay.press(map.canvas(), SWT.CR, '\r', 0);
			OnDisplay.press(map.canvas(), SWT.CR, '\r', 0);
			assertEquals(List.of(), jumps, "what is typed next must not fall into the text");
			OnDisplay.press(map.canvas(), SWT.F3, '\0', 0);
			OnDisplay.press(map.canvas(), SWT.ARROW_RIGHT, '\0', 0);
			OnDisplay.press(map.canvas(), SWT.CR, '\r', SWT.MOD1);
			OnDisplay.press(map.canvas(), SWT.ESC, '\u001b', 0);
		});
		assertEquals(List.of(List.of("A"), List.of("A", "B"), List.of()), chosen);
		assertEquals(List.of("A"), opened);
		assertEquals(List.of("A"), jumps);
	}

	private static boolean traverse(Control control, int detail) {
		Event event = new Event();
		event.detail = detail;
		event.doit = true;
		control.notifyListeners(SWT.Traverse, event);
		return event.doit;
	}

	@Test
	void tabWalksThroughTheKeysAndThenLeaves() {
		Bench bench = new Bench(ROWS);
		OnDisplay.run(shell -> {
			KeyMap map = new KeyMap(shell, Palette.light());
			map.show(KeyMapState.of(bench.plan(), bench.findings()), Set.of());
			OnDisplay.open(shell);
			List<Boolean> left = new ArrayList<>();
			for (int step = 0; step < 4; step++) {
				left.add(traverse(map.canvas(), SWT.TRAVERSE_TAB_NEXT));
			}
			assertEquals(List.of(false, false, false, true), left);
		});
	}

	@Test
	void theMouseZoomsAboutWhereItIs() {
		Bench bench = new Bench(ROWS);
		OnDisplay.run(shell -> {
			KeyMap map = new KeyMap(shell, Palette.light());
			map.show(KeyMapState.of(bench.plan(), bench.findings()), Set.of());
			OnDisplay.open(shell);
			double before = map.canvas().view().scale();
			Event wheel = new Event();
			wheel.stateMask = SWT.MOD1;
			wheel.count = 3;
			wheel.x = 100;
			wheel.y = 80;
			double under = map.canvas().view().sceneX(100);
			map.canvas().notifyListeners(SWT.MouseVerticalWheel, wheel);
			assertTrue(map.canvas().view().scale() > before);
			assertEquals(under, map.canvas().view().sceneX(100), 1e-6);
			OnDisplay.press(map.canvas(), '0', '0', 0);
			assertEquals(before, map.canvas().view().scale(), 1e-9);
		});
	}

	@Test
	void readingsAreTypedWithoutTheMouse() {
		Bench bench = new Bench("key A empty 15");
		OnDisplay.run(shell -> {
			RimClockControl clock = new RimClockControl(shell, Palette.light());
			clock.onEdit(bench::apply);
			clock.show(ClockState.of(bench.row("A")));
			OnDisplay.open(shell);
			for (String reading : List.of("0.5", "1", ".", "0")) {
				OnDisplay.type(clock.canvas(), reading);
				clock.show(ClockState.of(bench.row("A")));
			}
		});
		assertEquals("key A empty 15 felt 0.5 1 . .", bench.rows());
	}

	@Test
	void piecesAreMovedWithTheArrows() {
		Bench bench = new Bench(ROWS);
		OnDisplay.run(shell -> {
			RimClockControl clock = new RimClockControl(shell, Palette.dark());
			clock.onEdit((List<TextEdit> edits) -> bench.apply(edits));
			clock.show(ClockState.of(bench.row("A")));
			OnDisplay.open(shell);
			clock.canvas().setFocusOn(Optional.of("piece-0"));
			OnDisplay.press(clock.canvas(), SWT.CR, '\r', 0);
			OnDisplay.press(clock.canvas(), SWT.ARROW_LEFT, '\0', 0);
			clock.show(ClockState.of(bench.row("A")));
			OnDisplay.press(clock.canvas(), SWT.ARROW_RIGHT, '\0', SWT.MOD2);
			clock.show(ClockState.of(bench.row("A")));
		});
		assertTrue(bench.rows().contains("shim 0.5 from 7.5 to 10.5"), bench.rows());
	}

	/** Else it would be a square of another colour in a selected row. */
	@Test
	void marksOfStatesHaveNoGroundOfTheirOwn() {
		OnDisplay.run(shell -> {
			MarkImages<KeyState> marks = new MarkImages<>(shell, Palette.dark(), StateMarks::draw);
			ImageData mark = marks.of(KeyState.DONE).getImageData();
			assertEquals(0, mark.getAlpha(0, 0));
			assertNotEquals(0, mark.getAlpha(mark.width / 2, mark.height / 2));
		});
	}

	@Test
	void whatCannotBePressedLooksSo() {
		Bench bench = new Bench(ROWS);
		for (Palette palette : List.of(Palette.light(), Palette.dark())) {
			OnDisplay.run(shell -> {
				RimClockControl clock = new RimClockControl(shell, palette);
				clock.show(ClockState.of(bench.row("A")));
				OnDisplay.open(shell);
				assertNotEquals(button(clock, "Solve").getForeground(), button(clock, "Apply").getForeground());
			});
		}
	}

	private static Button button(Composite within, String text) {
		return Arrays.stream(within.getChildren()).flatMap(child -> child instanceof Composite bar
				? Arrays.stream(bar.getChildren()) : Stream.of(child)).filter(Button.class::isInstance).map(Button.class::cast)
				.filter(button -> button.getText().equals(text)).findFirst().orElseThrow();
	}

	@Test
	void drawingsAreInTheColoursOfTheirTheme() {
		Bench bench = new Bench(ROWS);
		OnDisplay.run(shell -> {
			CupSection section = new CupSection(shell, Palette.light());
			section.show(CupSectionState.of(bench.row("A")));
			Set<Integer> light = colours(shell, section.canvas());
			section.setPalette(Palette.dark());
			section.setExaggeration(5);
			Set<Integer> dark = colours(shell, section.canvas());
			assertTrue(light.size() > 5 && dark.size() > 5, "something is painted");
			assertNotEquals(light, dark);
		});
	}
}
