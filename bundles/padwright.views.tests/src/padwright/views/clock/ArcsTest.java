package padwright.views.clock;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;

import org.junit.jupiter.api.Test;

import padwright.engine.clock.Arc;
import padwright.engine.clock.ClockHour;
import padwright.engine.film.PartialShim;
import padwright.engine.length.Length;

class ArcsTest {

	private static final List<Length> FILMS = List.of(Length.thou("0.5"), Length.thou("1"), Length.thou("2"));
	private static final List<PartialShim> ONE = List
			.of(new PartialShim(new Arc(new ClockHour(4), 4), Length.thou("1")));

	@Test
	void anEndGoesToAnyHourButTheOtherEnds() {
		SplittableRandom random = new SplittableRandom(3);
		for (int round = 0; round < 200; round++) {
			ClockHour hour = new ClockHour(random.nextInt(24));
			Arc from = Arcs.moved(ONE, 0, Arcs.End.FROM, hour).get(0).arc();
			Arc to = Arcs.moved(ONE, 0, Arcs.End.TO, hour).get(0).arc();
			assertEquals(new ClockHour(8), from.to());
			assertEquals(new ClockHour(4), to.from());
			assertEquals(hour.equals(new ClockHour(8)) ? new ClockHour(4) : hour, from.from());
			assertEquals(hour.equals(new ClockHour(4)) ? new ClockHour(8) : hour, to.to());
		}
	}

	@Test
	void shiftsThereAndBackChangeNothing() {
		for (Arcs.End end : Arcs.End.values()) {
			assertEquals(ONE, Arcs.shifted(Arcs.shifted(ONE, 0, end, 1), 0, end, -1));
		}
		assertEquals("1 from 1.5 to 4", Arcs.shifted(ONE, 0, Arcs.End.FROM, -1).get(0).toString());
		assertEquals("1 from 2 to 4.5", Arcs.shifted(ONE, 0, Arcs.End.TO, 1).get(0).toString());
	}

	@Test
	void thicknessesAreThoseOfTheStock() {
		assertEquals("2 from 2 to 4", Arcs.thicker(ONE, 0, 1, FILMS).get(0).toString());
		assertEquals("0.5 from 2 to 4", Arcs.thicker(ONE, 0, -1, FILMS).get(0).toString());
		assertEquals(ONE, Arcs.thicker(ONE, 0, 1, FILMS.subList(0, 2)));
	}

	@Test
	void anotherPieceLiesWhereTheGapIsWidest() {
		assertEquals("0.5 from 6 to 8",
				Arcs.withAnother(ONE, FILMS, Optional.of(ClockHour.ofHour(7))).get(1).toString());
		assertEquals("0.5 from 11 to 1", Arcs.withAnother(ONE, FILMS, Optional.empty()).get(1).toString());
		assertEquals(ONE, Arcs.withAnother(ONE, List.of(), Optional.empty()));
		assertEquals(List.of(), Arcs.without(ONE, 0));
	}
}
