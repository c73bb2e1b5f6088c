package padwright.engine.rim;

import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.IntStream;

import padwright.engine.clock.ClockHour;
import padwright.engine.length.Length;

/** Invented readings at 4, 5, 6, 8 or 12 hours, evenly around the clock. */
final class ReadingsForComparison {

	private static final int[] COUNTS = { 4, 5, 6, 8, 12 };

	private ReadingsForComparison() {
	}

	/** Intervals of half a thou to two thou, which mostly agree. */
	static List<RimReading> mostlyAgreeing(SplittableRandom random) {
		return readings(random, 4);
	}

	/** Points and short intervals far apart, which mostly contradict. */
	static List<RimReading> mostlyContradicting(SplittableRandom random) {
		return readings(random, 1);
	}

	private static List<RimReading> readings(SplittableRandom random, int widest) {
		int count = COUNTS[random.nextInt(COUNTS.length)];
		return IntStream.range(0, count).map(i -> i * ClockHour.STATIONS / count).mapToObj(station -> {
			Length atLeast = Length.thou("0.5").times(random.nextInt(8));
			Length width = Length.thou("0.5").times(random.nextInt(widest + 1));
			boolean open = random.nextInt(8) == 0;
			return new RimReading(new ClockHour(station), atLeast,
					open ? Optional.empty() : Optional.of(atLeast.plus(width)));
		}).toList();
	}
}
