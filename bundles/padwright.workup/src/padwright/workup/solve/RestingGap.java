package padwright.workup.solve;

import java.util.Arrays;

import padwright.engine.rim.RimProfile;

/** What stays open of a predicted gap once the key lies still. */
public final class RestingGap {

	private RestingGap() {
	}

	/**
	 * The gap less its least: a closing key comes to rest where its face meets the highest spot of the rim. Only its
	 * height is taken away: the hinge holds the tilt.
	 */
	public static RimProfile of(RimProfile gap) {
		long least = gap.stream().min().getAsLong();
		return RimProfile.ofNanometres(Arrays.stream(gap.toNanometres()).map(open -> open - least).toArray());
	}
}
