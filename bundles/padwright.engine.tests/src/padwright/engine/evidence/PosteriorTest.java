package padwright.engine.evidence;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;

import padwright.engine.calibration.NormalCurve;
import padwright.engine.clock.ClockHour;
import padwright.engine.closing.Hinge;
import padwright.engine.length.Length;
import padwright.engine.levelling.Stiffness;
import padwright.engine.rim.FeelerSet;

class PosteriorTest {

	private static final FeelerSet LEAVES = new FeelerSet(Stream.of("0.5", "1", "1.5", "2").map(Length::thou).toList());
	private static final double THOU = 25_400;
	private static final Length ALMOST_NOTHING = Length.ofNanometres(1);

	/** Tilt and saddle only, a known key and pad. */
	private static PadModel plain(ClockHour hinge) {
		Length one = Length.thou("1");
		RimPrior prior = new RimPrior(
				List.of(one, Length.thou("0.5"), ALMOST_NOTHING, ALMOST_NOTHING, ALMOST_NOTHING, ALMOST_NOTHING));
		return new PadModel(prior, new Hinge(hinge, 0.5), 0, new Stiffness(0.1), 0, PadModel.USUAL_FEEL);
	}

	private static FeltRound round(FeltReading... readings) {
		return new FeltRound(List.of(readings), FilmInPlace.NONE);
	}

	private static FeltReading drag(int hour) {
		return FeltReading.drag(ClockHour.ofHour(hour), LEAVES);
	}

	private static FeltReading slide(int hour, String leaf) {
		return FeltReading.slide(ClockHour.ofHour(hour), Length.thou(leaf), LEAVES);
	}

	/**
	 * Against integration over a grid of four amplitudes, roughness and feel by their own few points, written in the
	 * plainest way with the definitions alone.
	 */
	@Test
	void agreesWithIntegrationOverAGrid() {
		List<FeltReading> readings = List.of(drag(12), slide(3, "0.5"), slide(6, "1"), drag(9));
		Posterior posterior = Posterior.of(plain(new ClockHour(0)), List.of(new FeltRound(readings, FilmInPlace.NONE)),
				FilmInPlace.NONE);
		GridIntegral grid = new GridIntegral(readings, 0.5);
		double[] nothing = new double[24];
		for (int station = 0; station < 24; station += 3) {
			int at = station;
			double mean = posterior.rims().stream().mapToDouble(rim -> rim.gap(nothing)[at]).average().orElseThrow();
			assertEquals(grid.meanGap(station), mean, 0.06 * THOU, "station " + station);
		}
		assertEquals(grid.chanceWithin(1.2 * THOU), posterior.chanceWithin(Length.thou("1.2")), 0.06);
	}

	/** Before anything is felt, correlated amplitudes lie in an orthant as Sheppard's formula of 1899 says. */
	@Test
	void drawsThePriorByTheOrthantProbabilities() {
		RimState layout = new RimState(plain(new ClockHour(0)).prior(), 0, 0);
		RandomStream random = new RandomStream(1);
		int rims = 40_000;
		int[] both = new int[24];
		for (int rim = 0; rim < rims; rim++) {
			double[] state = layout.draw(random);
			for (int station = 1; station < 24; station++) {
				both[station] += state[layout.normals()] > 0 && state[layout.normals() + station] > 0 ? 1 : 0;
			}
		}
		for (int station = 1; station < 24; station++) {
			double angle = 2 * Math.PI * station / 24;
			double correlation = (Math.cos(angle) + 0.25 * Math.cos(2 * angle)) / 1.25;
			double orthant = 0.25 + Math.asin(correlation) / (2 * Math.PI);
			assertEquals(orthant, both[station] / (double) rims, 0.01, "station " + station);
		}
	}

	/**
	 * Simulation-based calibration: with truths drawn from the prior and felt as the model says, the rank of the truth
	 * among the sample is even (S. Talts and others, Validating Bayesian inference algorithms with simulation-based
	 * calibration, 2018; from memory). Chi-square of 8 bins, 7 degrees of freedom: 24.3 is passed once in a thousand
	 * (tables of the distribution).
	 */
	@Test
	void ranksOfTheTruthAreEven() {
		PadModel pad = new PadModel(RimPrior.of(RimCondition.DRAWN), new Hinge(new ClockHour(0), 0.5), 0.3,
				new Stiffness(0.1), 0.3, PadModel.USUAL_FEEL);
		int[] bins = new int[8];
		int truths = 120;
		for (int truth = 0; truth < truths; truth++) {
			bins[rank(pad, new RandomStream(1000 + truth))]++;
		}
		double expected = truths / (double) bins.length;
		double chiSquare = Arrays.stream(bins).mapToDouble(count -> (count - expected) * (count - expected) / expected)
				.sum();
		assertTrue(chiSquare < 24.3, () -> chiSquare + " of " + Arrays.toString(bins));
	}

	private static int rank(PadModel pad, RandomStream random) {
		RimWeights weights = new RimWeights(pad, List.of(), FilmInPlace.NONE);
		RimNow truth = weights.now(weights.layout().draw(random));
		double[] nothing = new double[24];
		double[] gap = truth.gap(nothing);
		List<FeltReading> readings = new ArrayList<>();
		for (int hour = 0; hour < 24; hour += 3) {
			readings.add(feel(new ClockHour(hour), gap, truth.feel(), random));
		}
		Posterior posterior = Posterior.of(pad, List.of(new FeltRound(readings, FilmInPlace.NONE)), FilmInPlace.NONE);
		double widest = Arrays.stream(gap).max().orElseThrow();
		long below = posterior.rims().stream()
				.filter(rim -> Arrays.stream(rim.gap(nothing)).max().orElseThrow() < widest).count();
		return (int) Math.min(7, below * 8 / posterior.rims().size());
	}

	private static FeltReading feel(ClockHour hour, double[] gap, double feel, RandomStream random) {
		int station = hour.station();
		double slope = (gap[(station + 1) % 24] - gap[(station + 23) % 24]) / 6;
		double scatter = Math.hypot(feel, slope);
		Length slid = Length.ZERO;
		for (Length leaf : LEAVES.leaves()) {
			if (gap[station] + scatter * random.normal() < leaf.nanometres()) {
				return new FeltReading(hour, slid, Optional.of(leaf), slid.signum() == 0);
			}
			slid = leaf;
		}
		return new FeltReading(hour, slid, Optional.empty(), false);
	}

	/** JCGM 106:2012: a chance of conformance with one limit is Φ((limit − value) / u). */
	@Test
	void dragsByTheProbabilityOfConformance() {
		double[][] table = { { 0, 0.5 }, { 0.5, 0.6914625 }, { 1, 0.8413447 }, { 1.5, 0.9331928 }, { 2, 0.9772499 },
				{ 3, 0.9986501 } };
		for (double[] row : table) {
			assertEquals(row[1], NormalCurve.below(row[0]), 1e-7);
			double withSlips = 0.005 + 0.99 * row[1];
			assertEquals(Math.log(withSlips), DragCurve.logProbability(row[0]), 1e-4);
		}
	}

	@Test
	void turnsWithTheHinge() {
		PadModel pad = plain(new ClockHour(0));
		PadModel turned = plain(new ClockHour(6));
		GapBand band = Posterior.of(pad, List.of(round(drag(12), slide(3, "1"), drag(6), slide(9, "0.5"))),
				FilmInPlace.NONE).band();
		GapBand turnedBand = Posterior.of(turned, List.of(round(drag(3), slide(6, "1"), drag(9), slide(12, "0.5"))),
				FilmInPlace.NONE).band();
		IntStream.range(0, 24).forEach(station -> assertEquals(band.mid().nanometresAt(station),
				turnedBand.mid().nanometresAt((station + 6) % 24)));
	}

	@Test
	void isTheSameEveryTime() {
		List<FeltRound> rounds = List.of(round(drag(12), slide(4, "1"), drag(8)));
		assertEquals(Posterior.of(plain(new ClockHour(0)), rounds, FilmInPlace.NONE).band(),
				Posterior.of(plain(new ClockHour(0)), rounds, FilmInPlace.NONE).band());
	}

	@Test
	void doubtsOneReadingAmongMany() {
		List<FeltReading> readings = new ArrayList<>();
		for (int hour = 1; hour <= 12; hour++) {
			readings.add(hour == 4 ? slide(4, "2") : drag(hour));
		}
		List<DoubtedReading> doubted = Posterior
				.of(plain(new ClockHour(0)), List.of(new FeltRound(readings, FilmInPlace.NONE)), FilmInPlace.NONE)
				.doubted();
		assertEquals(List.of(ClockHour.ofHour(4)),
				doubted.stream().map(DoubtedReading::reading).map(FeltReading::hour).toList());
	}

	@Test
	void knowsLessWhereNothingWasRead() {
		GapBand band = Posterior.of(
				new PadModel(RimPrior.of(RimCondition.ROUGH), new Hinge(new ClockHour(0), 0.5), 0, new Stiffness(0.003), 0,
						PadModel.USUAL_FEEL),
				List.of(round(drag(12), slide(1, "1"), slide(2, "1"), drag(3))), FilmInPlace.NONE).band();
		assertTrue(width(band, 15) > 2 * width(band, 3));
	}

	private static long width(GapBand band, int station) {
		return band.high().nanometresAt(station) - band.low().nanometresAt(station);
	}
}
