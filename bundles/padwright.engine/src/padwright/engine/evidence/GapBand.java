package padwright.engine.evidence;

import java.util.Arrays;
import java.util.List;

import padwright.engine.clock.ClockHour;
import padwright.engine.rim.RimProfile;

/**
 * Where the gap lies at each station, hour by hour: nine in ten of the possible rims lie between low and high there. The
 * three are no rims themselves.
 *
 * @param low 5 in 100 are narrower
 * @param mid as many are wider as narrower
 * @param high 5 in 100 are wider
 */
public record GapBand(RimProfile low, RimProfile mid, RimProfile high) {

	/**
	 * The band of a sample.
	 *
	 * @param gaps by rim, and station counted from the side of the hinge, in nm; at least one rim
	 */
	public static GapBand of(List<double[]> gaps, ClockHour hinge) {
		double[][] sorted = new double[ClockHour.STATIONS][];
		for (int station = 0; station < sorted.length; station++) {
			int turned = Math.floorMod(station - hinge.station(), ClockHour.STATIONS);
			sorted[station] = gaps.stream().mapToDouble(gap -> gap[turned]).sorted().toArray();
		}
		return new GapBand(at(sorted, 0.05), at(sorted, 0.5), at(sorted, 0.95));
	}

	private static RimProfile at(double[][] sorted, double share) {
		return RimProfile.ofNanometres(Arrays.stream(sorted)
				.mapToLong(gaps -> Math.round(gaps[(int) Math.min(gaps.length - 1, share * gaps.length)])).toArray());
	}
}
