package padwright.workup.history;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.function.LongUnaryOperator;
import java.util.stream.LongStream;

import org.junit.jupiter.api.Test;

import padwright.engine.clock.ClockHour;
import padwright.engine.length.Length;
import padwright.engine.rim.RimProfile;

class TrendTest {

	private static final LocalDate START = LocalDate.parse("2000-01-01");
	private static final long FOUR_YEARS = 1461;

	@Test
	void aLineHasItsSlope() {
		assertEquals(Optional.of(new Trend(5, new Length(2_500), 1)), Trend.of(line(5, sure -> 0)));
	}

	/** Derived here: a median of ten slopes, of which four have the odd point. */
	@Test
	void oneOddReadingDoesNotMoveIt() {
		List<PadGaps> found = line(5, sure -> 0);
		found.set(2, gaps(found.get(2).date(), Length.thou("40").nanometres(), sure -> 0));
		assertEquals(new Length(2_500), Trend.of(found).orElseThrow().perYear());
	}

	@Test
	void whatMayGoEitherWayIsNoTrend() {
		assertEquals(Optional.empty(), Trend.of(line(3, sample -> sample % 5 == 0 ? 0 : sample % 2 * 400_000)
				.stream().map(gaps -> gaps.date().equals(START) ? gaps : shuffled(gaps)).toList()));
		assertTrue(Trend.of(line(3, sample -> sample % 3 * 1_000)).isPresent());
	}

	private static PadGaps shuffled(PadGaps gaps) {
		List<RimProfile> turned = new ArrayList<>(gaps.gaps());
		Collections.rotate(turned, (int) (gaps.date().toEpochDay() % 7));
		return new PadGaps(gaps.date(), turned);
	}

	@Test
	void twoDaysAreNoTrend() {
		List<PadGaps> two = line(2, sure -> 0);
		assertEquals(Optional.empty(), Trend.of(two));
		assertEquals(Optional.empty(), Trend.of(List.of(two.get(0), two.get(0), two.get(1))));
	}

	/** Ten micrometres more every four years, which have 1461 days; by {@code off} for each of a hundred samples. */
	private static List<PadGaps> line(int services, LongUnaryOperator off) {
		List<PadGaps> found = new ArrayList<>();
		for (int i = 0; i < services; i++) {
			found.add(gaps(START.plusDays(FOUR_YEARS * i), 10_000L * i, off));
		}
		return found;
	}

	private static PadGaps gaps(LocalDate date, long widest, LongUnaryOperator off) {
		return new PadGaps(date, LongStream.range(0, 100)
				.mapToObj(sample -> RimProfile.ofNanometres(LongStream.range(0, ClockHour.STATIONS)
						.map(station -> station == 3 ? widest + off.applyAsLong(sample) : 0).toArray()))
				.toList());
	}
}
