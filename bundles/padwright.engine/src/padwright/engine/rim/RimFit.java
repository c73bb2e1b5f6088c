package padwright.engine.rim;

import java.util.List;

import padwright.engine.clock.ClockHour;
import padwright.engine.length.Length;

/**
 * Estimates the profile of a rim from readings: the smoothest one that agrees with all of them.
 *
 * <p>The profile is a truncated Fourier series a₀ + Σ aₙ cos nθ + bₙ sin nθ. It minimises Σ n⁴(aₙ² + bₙ²), n ≥ 1
 * (its mean squared curvature, but for a constant), subject to every reading's interval and to a gap of zero or more
 * at all 24 stations, and has the smallest mean of those.
 *
 * <p>If no profile agrees with all readings, the total by which readings are missed is made as small as can be, then
 * the roughness, then the mean. The total, rather than a sum of squares, so that one reading that does not go with the
 * others is missed alone instead of every reading by a little.
 *
 * <p>The answer is unique, rounded to the nanometre, and turns with the readings.
 */
public final class RimFit {

	/** A violation in all below this, in nm, is the arithmetic's. */
	private static final double NO_VIOLATION = 1e-3;
	/** Halves of a nanometre are seen as such within 1/256 nm, so that they round alike at each hour. */
	private static final double GRID = 256;

	private RimFit() {
	}

	/**
	 * The smoothest profile.
	 *
	 * @param readings in any order; two at one hour both hold
	 * @throws IllegalArgumentException if there are none
	 */
	public static RimEstimate fit(List<RimReading> readings) {
		if (readings.isEmpty()) {
			throw new IllegalArgumentException("no reading to estimate a rim from");
		}
		FourierBasis basis = FourierBasis.ofOrder(order(readings));
		LeastViolation least = LeastViolation.of(readings, basis);
		StationBounds bounds = least.total() < NO_VIOLATION ? StationBounds.of(readings) : least.bounds();
		RimProfile profile = rounded(SmoothestProfile.within(bounds, basis));
		return new RimEstimate(profile, contradictions(readings, profile));
	}

	/**
	 * The highest harmonic that so many readings can carry: 1 for up to 3 different hours, 2 for 4 or 5, 3 for 6 or 7,
	 * 4 for 8 to 11, 5 for more.
	 */
	static int order(List<RimReading> readings) {
		long hours = readings.stream().map(RimReading::hour).distinct().count();
		return hours < 4 ? 1 : hours < 6 ? 2 : hours < 8 ? 3 : hours < 12 ? 4 : 5;
	}

	private static RimProfile rounded(double[] gaps) {
		long[] nanometres = new long[ClockHour.STATIONS];
		for (int station = 0; station < nanometres.length; station++) {
			nanometres[station] = Math.round(StrictMath.rint(gaps[station] * GRID) / GRID);
		}
		return RimProfile.ofNanometres(nanometres);
	}

	private static List<OutlyingReading> contradictions(List<RimReading> readings, RimProfile profile) {
		return readings.stream()
				.filter(reading -> missed(reading, profile).signum() > 0)
				.map(reading -> new OutlyingReading(reading, missed(reading, profile)))
				.toList();
	}

	private static Length missed(RimReading reading, RimProfile profile) {
		return reading.distanceFrom(profile.at(reading.hour()));
	}
}
