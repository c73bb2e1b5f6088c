package padwright.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Optional;

import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import padwright.views.canvas.SoundControl;
import padwright.views.sound.SoundSession;
import padwright.workbench.views.FingeringView;
import padwright.workbench.views.SoundView;

/** What an instrument sounds like while it is drawn and fingered. */
class SoundTest {

	/** Of the key that is dragged, with the head joint above it. */
	private static final double A = 180 + 185;

	@TempDir
	private Path folder;
	private Driver driver;

	@BeforeEach
	void openShop() throws Exception {
		driver = Driver.withExampleShop(folder);
	}

	@AfterEach
	void closeShop() throws Exception {
		driver.close();
	}

	private static SoundControl sound() throws Exception {
		SoundView view = (SoundView) Driver.view(SoundView.ID);
		return Driver.ui(view::control);
	}

	private static double cents(SoundSession session, String note) {
		return session.note(note).flatMap(each -> each.sound().cents()).orElse(Double.NaN);
	}

	@Test
	void centsFollowAHoleThatIsDragged() throws Exception {
		Drawing flute = Drawing.of(driver, "systems/boehm.keys", "BoehmC");
		SoundControl control = sound();
		SoundSession session = control.session();
		Driver.waitFor("the scale", () -> session.notes().size() > 30 && session.curve().isPresent());
		Driver.ui(() -> {
			session.choose("A♯4");
			return null;
		});
		double before = Driver.ui(() -> cents(session, "A♯4"));
		flute.hold(A, 0, A - 4, 0);
		Driver.waitFor("sharper", () -> cents(session, "A♯4") > before + 10 && session.isDragging());
		double there = Driver.ui(() -> cents(session, "A♯4"));
		assertTrue(Driver.ui(control::status).contains("as written"));
		ScreensTest.picture(Driver.ui(() -> control), "sound-dragged");
		flute.letGo(A - 4, 0);
		flute.expect("at 181");
		Driver.waitFor("what is written", () -> !session.isDragging() && Math.abs(cents(session, "A♯4") - there) < 1e-6);
	}

	@Test
	void aPlanSoundsAsItsSystem() throws Exception {
		driver.open("plans/spring-service.plan");
		SoundSession session = sound().session();
		Driver.waitFor("the scale", () -> session.notes().size() > 30);
		driver.open("systems/piccolo.keys");
		Driver.waitFor("another scale", () -> session.curve().flatMap(curve -> curve.played())
				.filter(played -> played.hertz() > 500).isPresent());
	}

	@Test
	void whatIsPressedAmongTheFingeringsSounds() throws Exception {
		driver.open("systems/boehm.keys");
		SoundControl control = sound();
		SoundSession session = control.session();
		Driver.waitFor("the scale", () -> session.notes().size() > 30);
		FingeringView fingerings = (FingeringView) Driver.view(FingeringView.ID);
		Driver.waitFor("touches", () -> fingerings.control().session().touches().size() > 10);
		Driver.pressButton(Driver.ui(fingerings::control), "Next note");
		String first = Driver.ui(() -> fingerings.control().session().note().orElseThrow());
		assertEquals(Optional.of(first), Driver.ui(session::chosen));
		String touch = Driver.ui(() -> fingerings.control().session().touches().get(0).label());
		Driver.pressButton(Driver.ui(fingerings::control), touch);
		Driver.waitFor("what is pressed", () -> control.status().startsWith("As pressed: "));
		Driver.pressButton(control, "Next note");
		Driver.waitFor("the note", () -> control.status().startsWith(first + ": "));
	}

	/** On a machine with sound all three can be pressed, on one without it none, and it says so. */
	@Test
	void aNoteIsHeardIfTheMachineHasSound() throws Exception {
		driver.open("systems/boehm.keys");
		SoundControl control = sound();
		Driver.waitFor("the curve", () -> control.session().curve().flatMap(curve -> curve.played()).isPresent());
		Driver.waitFor("an answer", () -> control.isSilent() || Driver.isEnabled(control, "Computed"));
		for (String button : new String[] { "Computed", "Tempered", "Both" }) {
			assertEquals(!Driver.ui(control::isSilent), Driver.ui(() -> Driver.isEnabled(control, button)), button);
		}
		Driver.pressButton(control, "Both");
		Driver.waitFor("what is said", () -> !control.status().isBlank());
	}
}
