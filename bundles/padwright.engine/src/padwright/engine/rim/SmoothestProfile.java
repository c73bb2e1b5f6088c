package padwright.engine.rim;


import padwright.engine.clock.ClockHour;

/**
 * The smoothest profile between bounds: a strictly convex quadratic programme, solved by the dual active-set method
 * (D. Goldfarb and A. Idnani, Mathematical Programming 27, 1983, pages 1 to 33; from memory).
 *
 * <p>The unknowns are the harmonics' amplitudes times n², so that the roughness is their squared length. The mean has
 * no cost and is eliminated: a mean exists if and only if for every two stations the profile rises from one to the
 * other by at least the lower bound there less the upper bound here. Those pairs are the constraints; only the worst
 * is ever looked for. The smallest mean then lifts the shape until it touches the lower bounds.
 */
final class SmoothestProfile {

	/** In nm; far below what rounding to the nanometre shows. */
	private static final double TOLERANCE = 1e-5;

	private final StationBounds bounds;
	private final double[][] functions;
	private final ActiveSet active;
	private double[] shape;
	private int lowest;
	private int highest;

	private SmoothestProfile(StationBounds bounds, FourierBasis basis) {
		this.bounds = bounds;
		functions = new double[ClockHour.STATIONS][basis.size()];
		for (int station = 0; station < functions.length; station++) {
			for (int function = 0; function < basis.size(); function++) {
				int harmonic = FourierBasis.harmonic(function);
				functions[station][function] = FourierBasis.value(function, station) / (harmonic * harmonic);
			}
		}
		active = new ActiveSet(basis.size());
		shape = new double[ClockHour.STATIONS];
	}

	/** Gaps at the 24 stations in nm; within the bounds but for the tolerance, which must be possible. */
	static double[] within(StationBounds bounds, FourierBasis basis) {
		SmoothestProfile search = new SmoothestProfile(bounds, basis);
		search.locateWorstPair();
		while (search.violation() > TOLERANCE) {
			search.obeyWorstPair();
			search.shape = search.shapeOf(search.active.point());
			search.locateWorstPair();
		}
		return search.lifted();
	}

	private double violation() {
		return wanted(lowest, highest) - (shape[lowest] - shape[highest]);
	}

	private double wanted(int low, int high) {
		return bounds.lower()[low] - bounds.upper()[high];
	}

	private void locateWorstPair() {
		for (int station = 0; station < ClockHour.STATIONS; station++) {
			if (need(station) > need(lowest)) {
				lowest = station;
			}
			if (room(station) < room(highest)) {
				highest = station;
			}
		}
	}

	/** The mean that this station's lower bound asks for. */
	private double need(int station) {
		return bounds.lower()[station] - shape[station];
	}

	/** The mean that this station's upper bound leaves. */
	private double room(int station) {
		return bounds.upper()[station] - shape[station];
	}

	private void obeyWorstPair() {
		double[] normal = new double[functions[0].length];
		for (int function = 0; function < normal.length; function++) {
			normal[function] = functions[lowest][function] - functions[highest][function];
		}
		active.obey(normal, wanted(lowest, highest));
	}

	private double[] shapeOf(double[] point) {
		double[] gaps = new double[ClockHour.STATIONS];
		for (int station = 0; station < gaps.length; station++) {
			gaps[station] = Vectors.dot(functions[station], point);
		}
		return gaps;
	}

	private double[] lifted() {
		double mean = need(lowest);
		double[] gaps = shape.clone();
		for (int station = 0; station < gaps.length; station++) {
			gaps[station] += mean;
		}
		return gaps;
	}
}
