package padwright.engine.rim;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;

import padwright.engine.clock.ClockHour;
import padwright.engine.length.Length;

/** Invented readings, from a bench's usual to the absurd. */
final class RandomReadings {

	private static final FeelerSet FEELERS = new FeelerSet(List.of(Length.thou("0.5"), Length.thou("1"),
			Length.thou("1.5"), Length.thou("2"), Length.thou("3")));

	private RandomReadings() {
	}

	/** One to sixteen readings of one kind, evenly around the clock or anywhere, several at an hour or not. */
	static List<RimReading> next(SplittableRandom random) {
		int count = 1 + random.nextInt(16);
		boolean even = random.nextBoolean();
		int kind = random.nextInt(3);
		List<RimReading> readings = new ArrayList<>();
		for (int i = 0; i < count; i++) {
			ClockHour hour = new ClockHour(even ? i * ClockHour.STATIONS / count : random.nextInt(ClockHour.STATIONS));
			readings.add(switch (kind) {
				case 0 -> felt(random, hour);
				case 1 -> RimReading.point(hour, Length.thou("0.5").times(26 + random.nextInt(7)));
				default -> anyInterval(random, hour);
			});
		}
		return readings;
	}

	private static RimReading felt(SplittableRandom random, ClockHour hour) {
		int leaf = random.nextInt(10) - 5;
		return leaf < 0 ? FEELERS.drags(hour) : FEELERS.free(hour, FEELERS.leaves().get(leaf));
	}

	private static RimReading anyInterval(SplittableRandom random, ClockHour hour) {
		Length atLeast = new Length(random.nextInt(400_000));
		Length atMost = atLeast.plus(new Length(random.nextInt(200_000)));
		return new RimReading(hour, atLeast, random.nextInt(4) == 0 ? Optional.empty() : Optional.of(atMost));
	}

	/** The same readings, later by some half hours. */
	static List<RimReading> turned(List<RimReading> readings, int halfHours) {
		return readings.stream().map(reading -> new RimReading(reading.hour().plusHalfHours(halfHours),
				reading.atLeast(), reading.atMost())).toList();
	}
}
