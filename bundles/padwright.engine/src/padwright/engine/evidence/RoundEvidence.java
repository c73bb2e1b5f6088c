package padwright.engine.evidence;

import java.util.List;

import padwright.engine.length.Length;

/** One round, laid out for quick weighing of many rims. */
final class RoundEvidence {

	private static final int STATIONS = RimState.STATIONS;
	private static final double NO_LIMIT = Double.POSITIVE_INFINITY;
	/**
	 * An hour is felt ten minutes of the clock early or late, a third of a half hour (a bench estimate, unverified): the
	 * gap there differs by a sixth of the difference of its neighbours.
	 */
	private static final double MISPLACED = 1 / 6.0;

	private final FilmUnderRim film;
	private final int[] stations;
	private final double[] above;
	private final double[] below;
	private final int heldOff;

	/** @param heldOff where a state says how far the key was held off, or -1 if something dragged */
	RoundEvidence(FeltRound round, FilmUnderRim film, int hinge, int heldOff) {
		List<FeltReading> readings = round.readings();
		this.film = film;
		this.heldOff = heldOff;
		stations = readings.stream()
				.mapToInt(reading -> Math.floorMod(reading.hour().station() - hinge, STATIONS)).toArray();
		above = readings.stream().mapToDouble(reading -> reading.above().nanometres()).toArray();
		below = readings.stream()
				.mapToDouble(reading -> reading.below().map(Length::nanometres).map(Long::doubleValue).orElse(NO_LIMIT))
				.toArray();
	}

	/**
	 * The logarithm of the likelihood of the readings under a rim, or something below {@code least} where it is below;
	 * {@code gap} is written over.
	 */
	double weigh(double[] state, RimShape shape, double[] gap, double least) {
		close(state, shape, gap);
		double sum = 0;
		for (int reading = 0; reading < stations.length && sum >= least; reading++) {
			sum += weigh(reading, shape, gap);
		}
		return sum;
	}

	/** The logarithm of the likelihood of one reading. */
	double weigh(int reading, RimShape shape, double[] gap) {
		int station = stations[reading];
		double slope = MISPLACED * (gap[station == STATIONS - 1 ? 0 : station + 1]
				- gap[station == 0 ? STATIONS - 1 : station - 1]);
		double scatter = 1 / Math.sqrt(shape.feel() * shape.feel() + slope * slope);
		double sum = 0;
		if (above[reading] > 0) {
			sum += DragCurve.logProbability((gap[station] - above[reading]) * scatter);
		}
		if (below[reading] < NO_LIMIT) {
			sum += DragCurve.logProbability((below[reading] - gap[station]) * scatter);
		}
		return sum;
	}

	/** Adds to {@code doubts} how likely it is of each reading that it says nothing of the gap. */
	void doubt(double[] state, RimShape shape, double[] gap, double[] doubts) {
		close(state, shape, gap);
		for (int reading = 0; reading < stations.length; reading++) {
			doubts[reading] += DragCurve.doubt(weigh(reading, shape, gap));
		}
	}

	int readings() {
		return stations.length;
	}

	/** The gap when lightly closed, in nm. */
	void close(double[] state, RimShape shape, double[] gap) {
		film.clearance(state, shape, gap);
		shape.close(gap, heldOff < 0 ? 0 : HeldOff.height(state[heldOff]));
	}
}
