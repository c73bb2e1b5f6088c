package padwright.engine.calibration;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.LongUnaryOperator;
import java.util.stream.IntStream;

import org.junit.jupiter.api.Test;

import padwright.engine.calibration.CalibrationResult.Calibrated;
import padwright.engine.calibration.CalibrationResult.Reason;
import padwright.engine.calibration.CalibrationResult.Undecided;
import padwright.engine.clock.Arc;
import padwright.engine.clock.ClockHour;
import padwright.engine.film.PartialShim;
import padwright.engine.length.Length;
import padwright.engine.levelling.Lift;
import padwright.engine.levelling.Stiffness;
import padwright.engine.rim.RimReading;

/** Rounds that the model itself makes, with invented gaps, so that the stiffness is known. */
class CalibrationTest {

	private static final Length GAP = Length.thou("6");
	private static final LongUnaryOperator EXACT = gap -> gap;

	@Test
	void holdsTheStiffnessThatMadeTheReadings() {
		SplittableRandom random = new SplittableRandom(50);
		int decided = 0;
		for (int run = 0; run < 150; run++) {
			Stiffness truth = StiffnessScale.at(random.nextDouble());
			long step = random.nextLong(1_000, 12_700);
			List<CalibrationRound> rounds = IntStream.rangeClosed(1, 1 + random.nextInt(3))
					.mapToObj(i -> round(piece(random), truth, step, EXACT)).toList();

			if (Calibration.of(rounds) instanceof Calibrated result) {
				decided++;
				assertTrue(result.error().isEmpty());
				assertTrue(result.atLeast().lambda() <= truth.lambda() + 1e-9, () -> truth + " " + result);
				assertTrue(result.atMost().lambda() >= truth.lambda() - 1e-9, () -> truth + " " + result);
				assertTrue(result.best().lambda() >= result.atLeast().lambda());
				assertTrue(result.best().lambda() <= result.atMost().lambda());
			}
		}
		assertTrue(decided > 100, "decided only " + decided);
	}

	@Test
	void findsTheStiffnessFromMeasuredGaps() {
		for (double lambda : new double[] { 0, 0.003, 0.02, 0.1, 0.7 }) {
			Calibrated result = calibrated(List.of(round(piece(4, 3), new Stiffness(lambda), 0, EXACT)));

			assertEquals(lambda, result.best().lambda(), 1e-3 * lambda + 1e-6);
			assertEquals(Optional.empty(), result.error());
		}
	}

	@Test
	void isNeverWiderForFinerReadings() {
		Stiffness truth = new Stiffness(0.02);
		PartialShim piece = piece(2, 4);
		Calibrated coarse = calibrated(List.of(round(piece, truth, 6_350, EXACT)));
		Calibrated fine = calibrated(List.of(round(piece, truth, 6_350, EXACT), round(piece, truth, 635, EXACT)));

		assertTrue(fine.atLeast().lambda() >= coarse.atLeast().lambda());
		assertTrue(fine.atMost().lambda() < coarse.atMost().lambda());
	}

	@Test
	void givesTheErrorOfReadingsThatNoStiffnessExplains() {
		SplittableRandom random = new SplittableRandom(51);
		int covered = 0;
		int runs = 40;
		for (int run = 0; run < runs; run++) {
			Stiffness truth = new Stiffness(0.03);
			LongUnaryOperator disturbed = gap -> gap - 2_000 + random.nextLong(-4_000, 4_001);
			Calibrated result = calibrated(
					List.of(round(piece(0, 6), truth, 500, disturbed), round(piece(7, 6), truth, 500, disturbed)));

			assertEquals(2_000, result.error().orElseThrow().offset().nanometres(), 2_500);
			assertEquals(4_000 / Math.sqrt(3), result.error().orElseThrow().deviation().nanometres(), 1_500);
			covered += result.atLeast().lambda() <= 0.03 && result.atMost().lambda() >= 0.03 ? 1 : 0;
		}
		assertTrue(covered >= runs * 4 / 5, "a range of 95 % held the truth in " + covered + " of " + runs);
	}

	@Test
	void cannotTellFromPiecesThatMakeAWholeCircle() {
		List<PartialShim> circle = List.of(piece(0, 8), piece(8, 8), piece(16, 8));

		assertRefuses(Reason.ALIKE, List.of(round(circle, new Stiffness(0.1), 500, EXACT)));
	}

	@Test
	void cannotTellFromCoarseReadings() {
		assertRefuses(Reason.TOO_WIDE, List.of(round(piece(0, 12), new Stiffness(0.1), 76_200, EXACT)));
	}

	@Test
	void cannotTellWhereTheFaceMayPressIn() {
		List<RimReading> drags = hours().mapToObj(
				hour -> new RimReading(new ClockHour(hour), Length.ZERO, Optional.of(Length.thou("0.5")))).toList();

		assertRefuses(Reason.TOO_WIDE, List.of(new CalibrationRound(drags, List.of(piece(0, 6)), drags)));
	}

	@Test
	void cannotTellFromReadingsThatChangedTheOtherWay() {
		CalibrationRound round = round(piece(3, 6), new Stiffness(0.05), 500, EXACT);

		assertRefuses(Reason.TOO_FAR_OFF, List.of(new CalibrationRound(round.after(), round.pieces(), round.before())));
	}

	@Test
	void refusesRoundsThatTellNothing() {
		List<RimReading> noon = List.of(RimReading.point(new ClockHour(0), GAP));
		List<RimReading> six = List.of(RimReading.point(new ClockHour(12), GAP));
		List<PartialShim> pieces = List.of(piece(0, 4));
		assertThrows(IllegalArgumentException.class, () -> Calibration.of(List.of()));
		assertThrows(IllegalArgumentException.class, () -> new CalibrationRound(noon, List.of(), noon));
		assertThrows(IllegalArgumentException.class, () -> new CalibrationRound(noon, pieces, six));
	}

	@Test
	void marksAnEvenScaleOfStiffness() {
		assertEquals(0, StiffnessScale.at(0).lambda());
		assertEquals(1, StiffnessScale.at(1).lambda(), 1e-12);
		assertEquals(0.1, StiffnessScale.at(Math.log(101) / Math.log(1001)).lambda(), 1e-12);
	}

	private static Calibrated calibrated(List<CalibrationRound> rounds) {
		return assertInstanceOf(Calibrated.class, Calibration.of(rounds));
	}

	private static void assertRefuses(Reason reason, List<CalibrationRound> rounds) {
		assertEquals(reason, assertInstanceOf(Undecided.class, Calibration.of(rounds)).why());
	}

	private static IntStream hours() {
		return IntStream.range(0, 8).map(i -> 3 * i);
	}

	private static PartialShim piece(SplittableRandom random) {
		return piece(random.nextInt(24), 2 + random.nextInt(10));
	}

	private static PartialShim piece(int from, int halfHours) {
		return new PartialShim(new Arc(new ClockHour(from), halfHours), Length.thou("4"));
	}

	private static CalibrationRound round(PartialShim piece, Stiffness truth, long step, LongUnaryOperator read) {
		return round(List.of(piece), truth, step, read);
	}

	/** Gaps are read as the interval between whole steps that holds them; a step of nothing measures them. */
	private static CalibrationRound round(List<PartialShim> pieces, Stiffness truth, long step,
			LongUnaryOperator read) {
		List<RimReading> before = new ArrayList<>();
		List<RimReading> after = new ArrayList<>();
		hours().mapToObj(ClockHour::new).forEach(hour -> {
			long lift = pieces.stream().mapToLong(piece -> Lift.of(piece, truth).at(hour).nanometres()).sum();
			before.add(reading(hour, GAP.nanometres(), step));
			after.add(reading(hour, read.applyAsLong(GAP.nanometres() - lift), step));
		});
		return new CalibrationRound(before, pieces, after);
	}

	private static RimReading reading(ClockHour hour, long gap, long step) {
		if (step == 0) {
			return RimReading.point(hour, new Length(gap));
		}
		long low = gap / step * step;
		return new RimReading(hour, new Length(low), Optional.of(new Length(low + step)));
	}
}
