package padwright.workup.words;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;

import org.junit.jupiter.api.Test;

import padwright.engine.clock.ClockHour;
import padwright.engine.length.Length;
import padwright.engine.rim.ProfileSplit;
import padwright.engine.rim.RimProfile;

class ProfileWordsTest {

	private static final double FOUR = ClockHour.ofHour(4).angle();
	private static final double ONE = ClockHour.ofHour(1).angle();

	@Test
	void namesTiltAndSaddleByTheirHours() {
		ProfileSplit split = split(angle -> 2 + 0.4 * Math.cos(angle - FOUR) + 0.25 * Math.cos(2 * (angle - ONE)));

		assertEquals("height 2 thou; tilt of 0.8 thou, open toward 4 o'clock: floating could cure it; "
				+ "saddle of 0.5 thou, open at 1 and 7: film only, floating cannot cure it", ProfileWords.of(split));
	}

	@Test
	void leavesOutWhatRoundsToNothing() {
		assertEquals("height 2 thou; even all around", ProfileWords.of(split(angle -> 2 + 0.02 * Math.cos(angle))));
		assertEquals("nothing to cure", ProfileWords.ofCure(split(angle -> 2 + 0.02 * Math.cos(angle))));
	}

	@Test
	void saysHowFarFloatingGoes() {
		assertEquals("floating could bring the spread from 0.8 thou to 0 thou",
				ProfileWords.ofCure(split(angle -> 2 + 0.4 * Math.cos(angle))));
		assertEquals("floating cannot cure any of the spread of 0.5 thou; it takes film",
				ProfileWords.ofCure(split(angle -> 2 + 0.25 * Math.cos(2 * angle))));
		assertEquals("floating could bring the spread from 1.6 thou to 1 thou; the rest takes film",
				ProfileWords.ofCure(split(angle -> 2 + 0.5 * Math.cos(angle) + 0.5 * Math.cos(2 * angle))));
	}

	@Test
	void aGainThatRoundsAwayIsNone() {
		ProfileSplit split = split(angle -> 2 + 0.25 * Math.cos(2 * angle));
		ProfileSplit gained = new ProfileSplit(split.height(), split.tilt(), split.saddle(), split.rest(),
				Length.thou("0.64"), Length.thou("0.56"));
		assertEquals("floating cannot cure any of the spread of 0.6 thou; it takes film", ProfileWords.ofCure(gained));
	}

	@Test
	void countsHalfHoursFromTheHourBefore() {
		ProfileSplit split = split(angle -> 2 + 0.4 * Math.cos(angle - new ClockHour(1).angle()));

		assertEquals("height 2 thou; tilt of 0.8 thou, open toward half past 12: floating could cure it",
				ProfileWords.of(split));
	}

	@Test
	void callsWhatIsFinerThanASaddleTheRest() {
		ProfileSplit split = split(angle -> 2 + 0.4 * Math.cos(3 * angle));

		assertEquals("height 2 thou; rest of 0.8 thou: film only", ProfileWords.of(split));
	}

	private static ProfileSplit split(DoubleUnaryOperator thou) {
		return ProfileSplit.of(RimProfile.ofNanometres(IntStream.range(0, ClockHour.STATIONS).mapToObj(ClockHour::new)
				.mapToLong(hour -> Math.round(25_400 * thou.applyAsDouble(hour.angle()))).toArray()));
	}
}
