package padwright.engine.acoustics;

/**
 * What an instrument is computed with beside its own sizes.
 *
 * @param air within it
 * @param holes model of holes, the embouchure hole too
 * @param matched whether the lens of air between a chimney and the round bore counts; true for chimneys measured at
 *        their shortest
 * @param holeEnd what open holes radiate like
 * @param boreEnd what the open end of the bore radiates like
 * @param mouthEnd what the embouchure hole radiates like
 */
public record SoundModel(AirConstants air, HoleModel holes, boolean matched, Radiation holeEnd, Radiation boreEnd,
		Radiation mouthEnd) {

	/** What came closest to the measured tubes of the tests: within 8 cents at resonances. */
	public static SoundModel in(AirConstants air) {
		return new SoundModel(air, HoleModel.DUBOS, true, Radiation.FLANGED, Radiation.UNFLANGED,
				Radiation.FLANGED_FIRST_ORDER);
	}
}
