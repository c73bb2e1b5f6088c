package padwright.engine.rim;

import java.util.List;

import padwright.engine.clock.ClockHour;

/**
 * The least total by which profiles of a basis, never negative, miss readings; and the bounds that hold exactly for
 * the profiles that miss them by no more.
 *
 * <p>Solves the dual linear programme, in which each reading pulls the profile up to its lower bound or down to its
 * upper one with a weight of at most one, and the zero gap pushes up, all in balance for every function of the basis.
 * By complementary slackness a profile misses by the least total if and only if it is on the bound of each reading
 * that pulls, beyond that bound (or on it) where the pull is the full one, inside each reading that does not pull
 * fully, and zero where the zero gap pushes.
 *
 * @param total in nm
 * @param bounds of all profiles that miss by this total
 */
record LeastViolation(double total, StationBounds bounds) {

	private static final double NO_PULL = 1e-9;

	static LeastViolation of(List<RimReading> readings, FourierBasis basis) {
		int count = readings.size();
		double scale = readings.stream().mapToDouble(LeastViolation::largestBound).max().orElse(0) + 1;
		double[] value = new double[2 * count + ClockHour.STATIONS];
		double[][] balance = new double[basis.size() + 1][value.length];
		double[][] fullPulls = new double[count][value.length];
		for (int i = 0; i < count; i++) {
			RimReading reading = readings.get(i);
			int station = reading.hour().station();
			value[i] = StationBounds.lower(reading) / scale;
			fill(balance, i, station, 1);
			fullPulls[i][i] = 1;
			if (reading.atMost().isPresent()) {
				value[count + i] = -StationBounds.upper(reading) / scale;
				fill(balance, count + i, station, -1);
				fullPulls[i][count + i] = 1;
			}
		}
		for (int station = 0; station < ClockHour.STATIONS; station++) {
			fill(balance, 2 * count + station, station, 1);
		}
		LinearProgram.Solution pulls = LinearProgram.maximise(value, balance, fullPulls);
		return new LeastViolation(pulls.total() * scale, bounds(readings, pulls));
	}

	private static double largestBound(RimReading reading) {
		return reading.atMost().orElse(reading.atLeast()).nanometres();
	}

	private static void fill(double[][] balance, int column, int station, int sign) {
		balance[0][column] = sign;
		for (int function = 0; function < balance.length - 1; function++) {
			balance[function + 1][column] = sign * FourierBasis.value(function, station);
		}
	}

	private static StationBounds bounds(List<RimReading> readings, LinearProgram.Solution pulls) {
		StationBounds bounds = StationBounds.open();
		int count = readings.size();
		for (int i = 0; i < count; i++) {
			RimReading reading = readings.get(i);
			boolean up = pulls.x()[i] > NO_PULL;
			boolean down = pulls.x()[count + i] > NO_PULL;
			boolean inside = pulls.slack()[i] > NO_PULL;
			if (inside || down) {
				bounds.raise(reading.hour(), down ? StationBounds.upper(reading) : StationBounds.lower(reading));
			}
			if (inside || up) {
				bounds.cut(reading.hour(), up ? StationBounds.lower(reading) : StationBounds.upper(reading));
			}
		}
		for (int station = 0; station < ClockHour.STATIONS; station++) {
			if (pulls.x()[2 * count + station] > NO_PULL) {
				bounds.cut(new ClockHour(station), 0);
			}
		}
		return bounds;
	}
}
