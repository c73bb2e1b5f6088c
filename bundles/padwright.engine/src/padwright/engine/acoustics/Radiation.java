package padwright.engine.acoustics;

import org.hipparchus.CalculusFieldElement;

/**
 * What an open end does to the sound that leaves through it. Unflanged is a thin tube that ends in the free air,
 * flanged one that ends in a large wall. All lie within a few cents of each other where ka is below 0.3; the choice of
 * flange counts for more.
 */
public enum Radiation {

	/** No pressure at the open end: a limit, not an instrument. */
	NONE(new RadiationLaw.None()),
	/**
	 * The first terms, (ka)²/4 + j·0.6113 ka, for small ka: after H. Levine and J. Schwinger, Phys. Rev. 73 (1948)
	 * 383–406, with the length that open holes are given in woodwind studies.
	 */
	UNFLANGED_LOW(new RadiationLaw.Low(0.25, 0.6113)),
	/** A flat piston, first order: A = 3π/8 in A. Chaigne and J. Kergomard (Springer 2016). */
	PISTON(new RadiationLaw.FirstOrder(3 * Math.PI / 8, 9 * Math.PI * Math.PI / 128)),
	/** First order, causal, end correction 0.6133 a, right for small ka. */
	UNFLANGED_FIRST_ORDER(new RadiationLaw.FirstOrder(1 / 0.6133, 0.25 / (0.6133 * 0.6133))),
	/** First order, causal, end correction 0.8236 a, right for small ka. */
	FLANGED_FIRST_ORDER(new RadiationLaw.FirstOrder(1 / 0.8236, 0.5 / (0.8236 * 0.8236))),
	/**
	 * Second order, causal: F. Silva, P. Guillemain, J. Kergomard, B. Mallaroni and A. N. Norris, Approximation
	 * formulae for the acoustic radiation impedance of a cylindrical pipe, J. Sound Vib. 322 (2009) 255–263.
	 */
	UNFLANGED_SECOND_ORDER(new RadiationLaw.SecondOrder(0.167, 1.393, 0.457)),
	/** As {@link #UNFLANGED_SECOND_ORDER}, in a wall. */
	FLANGED_SECOND_ORDER(new RadiationLaw.SecondOrder(0.182, 1.825, 0.649)),
	/** The closest fit of Silva et al. (2009), to about ka = 3.8; not causal, which does not matter to a frequency. */
	UNFLANGED(new RadiationLaw.Fitted(new double[] { 1, 0.8 }, new double[] { 1, 0.5 + 0.8, 0.266, 0.0263 },
			new double[] { 0.6133, 0.6133 * 0.0599 }, new double[] { 1, 0.238, -0.0153, 0.0015 })),
	/** As {@link #UNFLANGED}, in a wall. */
	FLANGED(new RadiationLaw.Fitted(new double[] { 1, 0.73 }, new double[] { 1, 1 + 0.73, 0.372, 0.0231 },
			new double[] { 0.8216, 0.8216 * 0.244 }, new double[] { 1, 0.723, -0.0198, 0.00366 })),
	/**
	 * J.-P. Dalmont, C. J. Nederveen and N. Joly, Radiation impedance of tubes with different flanges, J. Sound Vib.
	 * 244 (2001) 505–534, for ka below 1.5.
	 */
	UNFLANGED_DALMONT(new RadiationLaw.Dalmont()),
	/** A. N. Norris and I. C. Sheng, Acoustic radiation from a circular pipe with an infinite flange, J. Sound Vib. 135
	 * (1989) 85–93.
	 */
	FLANGED_NORRIS_SHENG(new RadiationLaw.NorrisSheng());

	private final RadiationLaw law;

	Radiation(RadiationLaw law) {
		this.law = law;
	}

	/** Impedance at the open end of a tube of this radius, in Pa·s/m³. */
	<T extends CalculusFieldElement<T>> T impedance(Tone<T> tone, T radius) {
		T x = tone.wavenumber().multiply(radius);
		T jx = tone.imaginaryWavenumber().multiply(radius);
		return law.relative(x, jx).multiply(tone.impedance(radius));
	}
}
