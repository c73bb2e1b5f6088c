package padwright.engine.mechanism;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Set;

import org.junit.jupiter.api.Test;

import padwright.engine.length.Length;

class TouchFeelTest {

	private static final List<MovingKey> KEYS = List.of(new MovingKey("F", Rest.OPEN), new MovingKey("Fs", Rest.OPEN),
			new MovingKey("As", Rest.OPEN), new MovingKey("Vent", Rest.CLOSED));
	private static final Map<String, BigDecimal> SPRINGS =
			Map.of("F", decimal("30"), "Fs", decimal("20"), "As", decimal("24"));

	/** 30 + 0.8 × 20 + 0.8 × 0.5 × 24 = 55.6, by hand. */
	@Test
	void eachSpringCountsWithTheRatiosOnTheWayToIt() {
		TouchFeel feel = TouchFeel.of(chain("0.8", "0", "0.5", "0"), "R1", SPRINGS);
		assertEquals(0, decimal("55.6").compareTo(feel.force()));
		assertEquals(Set.of(), feel.unweighed());
	}

	/** 2 thou at F; then 1 thou at Fs, which is 1 / 0.8 at F: 3.25 thou, by hand. */
	@Test
	void playIsCountedAtTheTouch() {
		TouchFeel feel = TouchFeel.of(chain("0.8", "2", "0.5", "1"), "R1", SPRINGS);
		assertEquals(Map.of("F", Length.ZERO, "Fs", Length.thou("2"), "As", Length.thou("3.25")), feel.lostMotion());
	}

	/** 0.1 thou over 3 is 846.67 nm, and rounded once it stays 847 nm over a third ratio. */
	@Test
	void lostMotionIsRoundedOnce() {
		TouchFeel feel = TouchFeel.of(chain("3", "0", "1", "0.1"), "R1", SPRINGS);
		assertEquals(new Length(847), feel.lostMotion().get("As"));
	}

	@Test
	void aKeyReachedTwoWaysIsLiftedOnceAndBeginsWithTheFirst() {
		Mechanism mechanism = mechanism(link("F", "Fs", "1", "1"), link("F", "As", "0.5", "5"),
				link("Fs", "As", "0.7", "1"));
		TouchFeel feel = TouchFeel.of(mechanism, "R1", SPRINGS);
		assertEquals(0, decimal("66.8").compareTo(feel.force()));
		assertEquals(Length.thou("2"), feel.lostMotion().get("As"));
	}

	@Test
	void aHeldKeyIsNotLiftedAndAnUnweighedOneIsNamed() {
		Mechanism mechanism = mechanism(KeyLink.holds("F", "Vent"), KeyLink.opens("Fs", "Vent"),
				KeyLink.closes("F", "Fs"));
		TouchFeel feel = TouchFeel.of(mechanism, "R1", Map.of("F", decimal("30"), "Vent", decimal("40")));
		assertEquals(0, decimal("30").compareTo(feel.force()));
		assertEquals(Set.of("Fs"), feel.unweighed());
		assertEquals(Set.of("F", "Fs"), feel.lostMotion().keySet());
	}

	@Test
	void aLinkThatWaitsForAnotherKeyLiftsNothing() {
		Mechanism mechanism = mechanism(KeyLink.closes("F", "Fs"), KeyLink.closes("F", "As").when("Vent"));
		assertEquals(0, decimal("50").compareTo(TouchFeel.of(mechanism, "R1", SPRINGS).force()));
	}

	@Test
	void anUnknownTouchIsRefused() {
		assertThrows(IllegalArgumentException.class, () -> TouchFeel.of(mechanism(), "R9", SPRINGS));
	}

	@Test
	void aRatioOfNoneOrPlayBelowNoneIsRefused() {
		assertThrows(IllegalArgumentException.class, () -> link("F", "Fs", "0", "0"));
		assertThrows(IllegalArgumentException.class, () -> link("F", "Fs", "1", "-1"));
	}

	private static Mechanism chain(String ratio, String play, String thenRatio, String thenPlay) {
		return mechanism(link("F", "Fs", ratio, play), link("Fs", "As", thenRatio, thenPlay));
	}

	private static Mechanism mechanism(KeyLink... links) {
		return new Mechanism(KEYS, List.of(), List.of(FingerTouch.moving("R1", "F")), List.of(links));
	}

	private static KeyLink link(String driver, String driven, String ratio, String thou) {
		return KeyLink.closes(driver, driven).with(decimal(ratio), Length.thou(thou));
	}

	private static BigDecimal decimal(String number) {
		return new BigDecimal(number);
	}
}
