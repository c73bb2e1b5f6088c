package padwright.workup.calibration;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;

import padwright.engine.calibration.Calibration;
import padwright.engine.calibration.CalibrationResult.Calibrated;
import padwright.engine.calibration.CalibrationRound;
import padwright.engine.clock.Arc;
import padwright.engine.clock.ClockHour;
import padwright.engine.film.PartialShim;
import padwright.engine.length.Length;
import padwright.engine.length.LengthUnit;
import padwright.engine.levelling.Lift;
import padwright.engine.levelling.Stiffness;
import padwright.engine.rim.RimProfile;
import padwright.model.plan.KeyService;
import padwright.model.plan.Round;
import padwright.workup.DemoPlan;
import padwright.workup.service.ServicePlan;
import padwright.workup.words.Phrase;

/** Rounds that the model itself makes, with invented gaps, so that the stiffness of the pad is known. */
class PadCalibrationTest {

	private static final List<ClockHour> HOURS = IntStream.range(0, 12).mapToObj(hour -> new ClockHour(2 * hour)).toList();
	private static final List<Length> LEAVES = Stream.of("0.5", "1", "1.5", "2", "3", "4").map(Length::thou).toList();

	/** How far the search for the ends of a range may be off. */
	private static final double ENDS = 1e-9;

	@Test
	void thePooledRangeHoldsTheStiffnessThatMadeTheReadings() {
		SplittableRandom random = new SplittableRandom(5);
		int decided = 0;
		for (int run = 0; run < 25; run++) {
			double lambda = Math.pow(10, -3 + 2.5 * random.nextDouble());
			PadCalibration pooled = only(PadCalibration.of(years(new Stiffness(lambda), 4, random)));
			assertEquals(8, pooled.rounds());
			if (pooled.stiffness().told().isPresent()) {
				Calibrated told = pooled.stiffness().told().get();
				decided++;
				assertTrue(told.error().isEmpty());
				assertTrue(told.atLeast().lambda() <= lambda + ENDS && lambda <= told.atMost().lambda() + ENDS,
						lambda + " " + told);
			}
		}
		assertTrue(decided > 15, "decided only " + decided);
	}

	@Test
	void theRoundsOfAllKeysAndYearsGoToTheEngineTogether() {
		List<ServicePlan> years = years(new Stiffness(0.01), 2, new SplittableRandom(6));
		List<CalibrationRound> all = years.stream().flatMap(plan -> plan.jobs().stream())
				.flatMap(job -> RoundsWithPieces.of(job).usable().stream()).toList();
		PadCalibration pooled = only(PadCalibration.of(years));
		assertEquals(ToldStiffness.of(Calibration.of(all)), pooled.stiffness());
		assertEquals("Bench.Felt", pooled.article());
		assertEquals(2, pooled.keys());
	}

	@Test
	void moreKeysDoNotWidenTheRange() {
		List<ServicePlan> years = years(new Stiffness(0.01), 3, new SplittableRandom(7));
		Calibrated few = told(only(PadCalibration.of(years.subList(0, 1))));
		Calibrated all = told(only(PadCalibration.of(years)));
		// The engine allows for the rounding of all modelled lifts together, which widens a range a little.
		assertTrue(all.atLeast().lambda() >= few.atLeast().lambda() / 1.05, few + " " + all);
		assertTrue(all.atMost().lambda() <= few.atMost().lambda() * 1.05, few + " " + all);
	}

	@Test
	void articlesAreToldApart() {
		DemoPlan felt = new DemoPlan();
		round(felt, felt.row(felt.key("F")), new Stiffness(0.01), 3, 4);
		DemoPlan other = new DemoPlan();
		other.pad.setName("Foam");
		round(other, other.row(other.key("F")), new Stiffness(0.01), 3, 4);
		assertEquals(List.of("Bench.Felt", "Bench.Foam"), PadCalibration.of(List.of(other.service(), felt.service()))
				.stream().map(PadCalibration::article).toList());
	}

	@Test
	void readingsThatCannotTellAreRefused() {
		DemoPlan demo = new DemoPlan();
		KeyService row = demo.row(demo.key("F"));
		demo.shim(demo.felt(row, ". 1 . ."), "0.5", "1", "7");
		demo.felt(row, ". . . .");
		assertEquals("stiffness.tooWide", only(PadCalibration.of(List.of(demo.service()))).stiffness().why().key());
		DemoPlan odd = new DemoPlan();
		KeyService short3 = odd.row(odd.key("F"));
		odd.shim(odd.felt(short3, ". 1 . ."), "0.5", "1", "7");
		odd.felt(short3, ". . .");
		PadCalibration refused = only(PadCalibration.of(List.of(odd.service())));
		assertEquals(0, refused.rounds());
		assertEquals(Phrase.of("readings.count", 3, 4), refused.stiffness().why());
	}

	@Test
	void withoutPiecesThereIsNothingToTell() {
		DemoPlan demo = new DemoPlan();
		demo.felt(demo.row(demo.key("F")), ". . . .");
		assertEquals(List.of(), PadCalibration.of(List.of(demo.service())));
	}

	/** Two keys a year, each with a round before and after one piece. */
	private static List<ServicePlan> years(Stiffness stiffness, int years, SplittableRandom random) {
		List<ServicePlan> plans = new ArrayList<>();
		for (int year = 0; year < years; year++) {
			DemoPlan demo = new DemoPlan();
			for (String key : List.of("F", "E")) {
				round(demo, demo.row(demo.key(key)), stiffness, random.nextInt(24), 2 + random.nextInt(5));
			}
			plans.add(demo.service());
		}
		return plans;
	}

	private static void round(DemoPlan demo, KeyService row, Stiffness stiffness, int from, int halfHours) {
		PartialShim piece = new PartialShim(new Arc(new ClockHour(from), halfHours), Length.thou("3"));
		RimProfile lift = Lift.of(piece, stiffness);
		Round before = felt(demo, row, hour -> gap(hour));
		demo.shim(before, "3", piece.arc().from().toString(), piece.arc().to().toString());
		felt(demo, row, hour -> gap(hour).minus(lift.at(hour)));
	}

	/** Never so small that the piece could press the face in, and different from hour to hour. */
	private static Length gap(ClockHour hour) {
		return Length.thou("3.2").plus(new Length(1_000L * hour.station() % 17_000));
	}

	private static Round felt(DemoPlan demo, KeyService row, Function<ClockHour, Length> gap) {
		Round round = demo.felt(row, HOURS.stream().map(hour -> leaf(gap.apply(hour))).collect(Collectors.joining(" ")));
		round.getHours().addAll(HOURS);
		return round;
	}

	/** The thickest leaf that slides free. */
	private static String leaf(Length gap) {
		return LEAVES.stream().filter(leaf -> !leaf.isLongerThan(gap)).reduce((thinner, thicker) -> thicker)
				.map(leaf -> leaf.in(LengthUnit.THOU, 1).toPlainString()).orElse(".");
	}

	private static PadCalibration only(List<PadCalibration> calibrations) {
		assertEquals(1, calibrations.size());
		return calibrations.get(0);
	}

	private static Calibrated told(PadCalibration calibration) {
		return calibration.stiffness().told().orElseThrow();
	}
}
