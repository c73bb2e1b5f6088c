package padwright.views.canvas;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;

import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.ACC;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.junit.jupiter.api.Test;

import padwright.engine.clock.ClockHour;
import padwright.views.Palette;
import padwright.views.layout.DrawnSystem;

/** What a screen reader is told of the drawings of an instrument. Needs a display. */
class AccessibilityTest {

	private static final String FLUTE = """
			unit mm
			system Flute {
				joint body long 300 bore 19
				touch T1 "thumb" at 50 around 40
				key A open by T1 hole 13 rim 1 cup 16 at 100
				key B "low B" closed hole 13 cup 16 at 140 around 20
			}
			""";

	private final DrawnSystem flute = new DrawnSystem(FLUTE);

	private static void traverse(Control control) {
		Event event = new Event();
		event.detail = SWT.TRAVERSE_TAB_NEXT;
		event.doit = true;
		control.notifyListeners(SWT.Traverse, event);
	}

	private static List<Control> within(Composite composite) {
		List<Control> all = new ArrayList<>();
		for (Control child : composite.getChildren()) {
			all.add(child);
			if (child instanceof Composite inner) {
				all.addAll(within(inner));
			}
		}
		return all;
	}

	/** Nothing that can be used is without a name: buttons have it from their text, too. */
	private static void assertAllNamed(Composite view) {
		for (Control control : within(view)) {
			if (control instanceof Button || control instanceof Text || control instanceof Combo
					|| control instanceof SceneCanvas) {
				String name = new Spoken(control).name();
				assertTrue(name != null && !name.isBlank() || control instanceof Button button && !button.getText().isBlank(),
						control.toString());
			}
		}
	}

	private static void run(Consumer<Shell> use) {
		OnDisplay.run(use);
	}

	@Test
	void everythingInTheLayoutHasANameARoleAndAState() {
		run(shell -> {
			LayoutControl layout = new LayoutControl(shell, Palette.light());
			layout.show(flute.layout());
			OnDisplay.open(shell);
			assertAllNamed(layout);
			Spoken spoken = new Spoken(layout.canvas());
			assertEquals("Layout", spoken.name());
			assertEquals(ACC.ROLE_LIST, spoken.role(ACC.CHILDID_SELF));
			assertEquals(3, spoken.children().size());
			int lowB = spoken.child("Key low B\n140 mm on body, 20°\nof this system");
			assertEquals(ACC.ROLE_LISTITEM, spoken.role(lowB));
			assertFalse(spoken.is(lowB, ACC.STATE_SELECTED));
			layout.editing().select(Set.of("key:B"));
			assertTrue(spoken.is(spoken.child("Key low B"), ACC.STATE_SELECTED));
			assertFalse(spoken.is(spoken.child("Touch thumb"), ACC.STATE_SELECTED));
		});
	}

	@Test
	void everySizeOfASectionHasItsFigure() {
		run(shell -> {
			HoleSectionControl section = new HoleSectionControl(shell, Palette.light());
			section.show(flute.layout());
			OnDisplay.open(shell);
			assertAllNamed(section);
			Spoken spoken = new Spoken(section.canvas());
			assertEquals("Section through a hole", spoken.name());
			assertEquals(8, spoken.children().size());
			spoken.child("Rim 1 mm, of this system");
			spoken.child("Arm: not said, drawn as usual");
			section.setFocus();
			traverse(section.canvas());
			assertTrue(section.canvas().focus().isPresent());
		});
	}

	@Test
	void touchesThatArePressedAreToldSo() {
		run(shell -> {
			FingeringControl fingerings = new FingeringControl(shell, Palette.light());
			fingerings.show(flute.layout());
			OnDisplay.open(shell);
			assertAllNamed(fingerings);
			Spoken spoken = new Spoken(fingerings.canvas());
			assertEquals("Fingerings", spoken.name());
			assertFalse(spoken.is(spoken.child("Touch thumb"), ACC.STATE_SELECTED));
			fingerings.canvas().setFocusOn(Optional.of("touch:T1"));
			OnDisplay.press(fingerings.canvas(), ' ', ' ', 0);
			assertTrue(spoken.is(spoken.child("Touch thumb"), ACC.STATE_SELECTED));
			assertTrue(Arrays.stream(fingerings.getChildren()).flatMap(row -> row instanceof Composite inner
					? within(inner).stream() : null).anyMatch(control -> control instanceof Button button
							&& "thumb".equals(new Spoken(button).name()) && button.getSelection()));
		});
	}

	@Test
	void hoursOfASmallClockAreGoneThroughWithTheArrowsAndChosen() {
		run(shell -> {
			List<List<ClockHour>> told = new ArrayList<>();
			HourClock clock = new HourClock(shell, Palette.light(), "Nick at, on the clock", true, told::add);
			clock.show(List.of(ClockHour.ofHour(3)));
			OnDisplay.open(shell);
			Spoken spoken = new Spoken(clock.canvas());
			assertEquals("Nick at, on the clock", spoken.name());
			assertEquals(ClockHour.STATIONS, spoken.children().size());
			assertTrue(spoken.is(spoken.child("3 o'clock, chosen"), ACC.STATE_SELECTED));
			clock.setFocus();
			OnDisplay.press(clock.canvas(), SWT.ARROW_RIGHT, '\0', 0);
			assertEquals(Optional.of("hour:3"), clock.canvas().focus());
			OnDisplay.press(clock.canvas(), SWT.ARROW_RIGHT, '\0', 0);
			OnDisplay.press(clock.canvas(), ' ', ' ', 0);
			assertEquals(List.of(List.of(ClockHour.ofHour(3), ClockHour.ofHour(3).plusHalfHours(1))), told);
			Event tab = new Event();
			tab.detail = SWT.TRAVERSE_TAB_NEXT;
			tab.doit = true;
			clock.canvas().notifyListeners(SWT.Traverse, tab);
			assertTrue(tab.doit, "Tab leaves the clock at once");
		});
	}
}
