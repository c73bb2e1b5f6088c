package padwright.engine.evidence;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;

import padwright.engine.clock.Arc;
import padwright.engine.clock.ClockHour;
import padwright.engine.closing.Hinge;
import padwright.engine.film.PartialShim;
import padwright.engine.length.Length;
import padwright.engine.levelling.Stiffness;
import padwright.engine.rim.FeelerSet;

/**
 * How much chance has a say in what is told: rims that were multiplied and have not yet moved apart tell a chance surely
 * and wrongly, and another one when anything changes.
 */
class RimSamplerTest {

	private static final FeelerSet LEAVES = new FeelerSet(
			Stream.of("0.5", "1", "1.5", "2", "3", "4").map(Length::thou).toList());
	private static final int TIMES = 32;
	private static final int RIMS = 1024;

	/** Two rounds, the second felt over thick pieces: hardly a rim that was drawn at first goes with both. */
	private static List<FeltRound> hardlyAnyRim() {
		FilmInPlace film = new FilmInPlace(
				List.of(piece(2, 16, "0.5"), piece(4, 12, "4"), piece(8, 12, "4")), Length.ZERO);
		return List.of(round(FilmInPlace.NONE, "0 .", "3 1.5", "5 3", "6 4", "9 4", "12 4", "15 4", "18 4", "20 2", "21 0.5",
				"22 0.5"), round(film, "1 .", "4 .", "6 0.5", "7 0.5", "10 .", "13 .", "16 .", "19 0.5", "22 0.5"));
	}

	private static PartialShim piece(int station, int halfHours, String thou) {
		return new PartialShim(new Arc(new ClockHour(station), halfHours), Length.thou(thou));
	}

	private static FeltRound round(FilmInPlace film, String... readings) {
		return new FeltRound(Stream.of(readings).map(RimSamplerTest::reading).toList(), film);
	}

	private static FeltReading reading(String text) {
		String[] parts = text.split(" ");
		ClockHour hour = new ClockHour(Integer.parseInt(parts[0]));
		return parts[1].equals(".") ? FeltReading.drag(hour, LEAVES)
				: FeltReading.slide(hour, Length.thou(parts[1]), LEAVES);
	}

	private static List<RimNow> rims(long seed) {
		PadModel pad = new PadModel(RimPrior.of(RimCondition.TRUE), new Hinge(new ClockHour(0), 7 / 12.0),
				PadModel.REACH_ASSUMED, new Stiffness(0.1), PadModel.STIFFNESS_ASSUMED, PadModel.USUAL_FEEL);
		List<FeltRound> rounds = hardlyAnyRim();
		RimWeights weights = new RimWeights(pad, rounds, rounds.get(1).film());
		return Stream.of(new RimSampler(weights, RIMS, seed).sample()).map(weights::now).toList();
	}

	/**
	 * The shares of rims that are wider open than a limit at an hour scatter from run to run as those of rims that know
	 * nothing of each other, or little more: the variance of a binomial share is p (1 − p) / n. Of three dozen such figures
	 * the worst exceeds that by chance alone, so that their mean is held closer.
	 */
	@Test
	void scattersHardlyMoreThanIndependentRims() {
		List<List<RimNow>> runs = LongStream.range(0, TIMES).mapToObj(RimSamplerTest::rims).toList();
		List<Double> excesses = new ArrayList<>();
		for (int station = 0; station < ClockHour.STATIONS; station += 2) {
			for (String limit : List.of("0.25", "0.5", "0.75")) {
				excesses.add(excess(runs, station, Length.thou(limit).nanometres()));
			}
		}
		double mean = excesses.stream().mapToDouble(excess -> excess).average().orElseThrow();
		assertTrue(mean < 1.5 && Collections.max(excesses) < 4,
				() -> "variance " + excesses + " times that of independent rims");
	}

	private static double excess(List<List<RimNow>> runs, int station, double limit) {
		double[] shares = runs.stream().mapToDouble(run -> share(run, station, limit)).toArray();
		double mean = IntStream.range(0, TIMES).mapToDouble(time -> shares[time]).average().orElseThrow();
		double variance = IntStream.range(0, TIMES)
				.mapToDouble(time -> (shares[time] - mean) * (shares[time] - mean)).sum() / (TIMES - 1);
		return variance / Math.max(mean * (1 - mean) / RIMS, 0.02 / RIMS);
	}

	private static double share(List<RimNow> rims, int station, double limit) {
		double[] nothing = new double[ClockHour.STATIONS];
		return rims.stream().filter(rim -> rim.gap(nothing)[station] > limit).count() / (double) RIMS;
	}
}
