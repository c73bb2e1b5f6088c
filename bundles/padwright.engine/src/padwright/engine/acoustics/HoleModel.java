package padwright.engine.acoustics;

import org.hipparchus.CalculusFieldElement;

/**
 * What a hole in the side of a tube does where it meets the bore: the air that turns into it is a mass on the way into
 * the hole, and the wall that is missing takes a little mass off the bore. Models differ by some cents.
 *
 * <p>b is the radius of the hole, t its chimney, a the radius of the bore, δ = b/a.
 */
public enum HoleModel {

	/**
	 * V. Dubos, J. Kergomard, A. Khettabi, J.-P. Dalmont, D. H. Keefe and C. J. Nederveen, Theory of sound propagation
	 * in a duct with a branched tube using modal decomposition, Acustica 85 (1999) 153–169, in the form for short
	 * chimneys of A. Chaigne and J. Kergomard, Acoustics of Musical Instruments (Springer 2016). An open and a closed
	 * hole are alike to it.
	 */
	DUBOS {
		@Override
		<T extends CalculusFieldElement<T>> T inner(Junction<T> hole) {
			return hole.radius().multiply(Series.at(hole.ratio(), 0.82, -0.193, -1.09, 1.27, -0.71));
		}

		@Override
		<T extends CalculusFieldElement<T>> T along(Junction<T> hole, boolean closed) {
			return hole.scaled(Series.at(hole.ratio(), -0.37, 0.087));
		}

		/** The lens of air is a mass alone here. */
		@Override
		<T extends CalculusFieldElement<T>> Neck<T> neck(Junction<T> hole, boolean closed) {
			return new Neck<>(hole.radius(), hole.chimney(), hole.bore(), inner(hole).add(hole.matching()),
					along(hole, closed));
		}

		@Override
		<T extends CalculusFieldElement<T>> T intoHole(Tone<T> tone, Neck<T> hole) {
			return super.intoHole(tone, hole).subtract(hole.alongBore(tone).multiply(0.25));
		}
	},

	/**
	 * A. Lefebvre and G. P. Scavone, Characterization of woodwind instrument toneholes with the finite element method,
	 * J. Acoust. Soc. Am. 131 (2012) 3153–3163, equations 31 to 34; for δ of 0.2 to 1 and ka below 1 (range from
	 * memory).
	 */
	LEFEBVRE_SCAVONE {
		@Override
		<T extends CalculusFieldElement<T>> T inner(Junction<T> hole) {
			return hole.radius()
					.multiply(Series.at(hole.ratio(), 0.822, -0.095, -1.566, 2.138, -1.64, 0.502));
		}

		/** The inner mass grows with the frequency. */
		@Override
		<T extends CalculusFieldElement<T>> T intoHole(Tone<T> tone, Neck<T> hole) {
			T moving = Series.at(tone.wavenumber().multiply(hole.bore()), 0, 0.17, 0.92, 0.16, -0.29);
			T share = Series.at(hole.radius().divide(hole.bore()), 1, -4.56, 6.55);
			return super.intoHole(tone, hole).multiply(share.multiply(moving).add(1));
		}

		@Override
		<T extends CalculusFieldElement<T>> T along(Junction<T> hole, boolean closed) {
			T deep = hole.chimney().divide(hole.radius());
			return hole.scaled(closed ? deep.multiply(2.4).tanh().multiply(-0.17).add(-0.12)
					: deep.multiply(2.7).tanh().multiply(0.06).add(-0.35));
		}
	},

	/**
	 * C. J. Nederveen, J. K. M. Jansen and R. R. van Hassel, Corrections for woodwind tone-hole calculations, Acustica
	 * 84 (1998) 957–966, and J.-P. Dalmont, C. J. Nederveen, V. Dubos, S. Ollivier, V. Méserette and E. te Sligte,
	 * Experimental determination of the equivalent circuit of an open side hole, Acustica 88 (2002) 567–575. An open
	 * and a closed hole are alike to it.
	 */
	NEDERVEEN {
		@Override
		<T extends CalculusFieldElement<T>> T inner(Junction<T> hole) {
			T ratio = hole.ratio();
			return hole.radius().multiply(ratio.multiply(ratio).multiply(-1.4).add(ratio.pow(2.7).multiply(0.75))
					.add(0.82));
		}

		@Override
		<T extends CalculusFieldElement<T>> T along(Junction<T> hole, boolean closed) {
			return hole.scaled(hole.ratio().newInstance(-0.28));
		}
	};

	/** Length of the mass on the way into the hole, in m. */
	abstract <T extends CalculusFieldElement<T>> T inner(Junction<T> hole);

	/** Length of what the hole adds to the bore, in m; below 0. */
	abstract <T extends CalculusFieldElement<T>> T along(Junction<T> hole, boolean closed);

	/** All lengths of a hole, the lens of air at its foot with the chimney. */
	<T extends CalculusFieldElement<T>> Neck<T> neck(Junction<T> hole, boolean closed) {
		return new Neck<>(hole.radius(), hole.chimney().add(hole.matching()), hole.bore(), inner(hole),
				along(hole, closed));
	}

	/** Impedance on the way into the hole, without its chimney. */
	<T extends CalculusFieldElement<T>> T intoHole(Tone<T> tone, Neck<T> hole) {
		return tone.inertance(hole.radius(), hole.inner());
	}
}
