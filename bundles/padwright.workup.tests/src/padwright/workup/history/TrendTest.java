package padwright.workup.history;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.junit.jupiter.api.Test;

import padwright.engine.length.Length;
import padwright.workup.history.Trend.Found;

class TrendTest {

	private static final LocalDate START = LocalDate.parse("2000-01-01");
	private static final long FOUR_YEARS = 1461;

	@Test
	void aLineHasItsSlope() {
		assertEquals(Optional.of(new Trend(5, new Length(2_500))), Trend.of(line(5)));
	}

	/** Derived here: a median of ten slopes, of which four have the odd point. */
	@Test
	void oneOddReadingDoesNotMoveIt() {
		List<Found> found = line(5);
		found.set(2, new Found(found.get(2).date(), Length.thou("40")));
		assertEquals(new Length(2_500), Trend.of(found).orElseThrow().perYear());
	}

	@Test
	void twoDaysAreNoTrend() {
		assertEquals(Optional.empty(), Trend.of(line(2)));
		assertEquals(Optional.empty(), Trend.of(List.of(line(1).get(0), line(2).get(0), line(2).get(1))));
	}

	/** Ten micrometres more every four years, which have 1461 days. */
	private static List<Found> line(int services) {
		List<Found> found = new ArrayList<>();
		for (int i = 0; i < services; i++) {
			found.add(new Found(START.plusDays(FOUR_YEARS * i), new Length(10_000L * i)));
		}
		return found;
	}
}
