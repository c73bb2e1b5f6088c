package padwright.engine.acoustics;

import java.util.Arrays;
import java.util.List;
import java.util.stream.DoubleStream;

import org.hipparchus.CalculusFieldElement;

/** What a tube ends in. */
sealed interface Ending {

	/** All that it depends on beside the radius of the tube, in m. */
	default double[] sizes() {
		return new double[0];
	}

	/**
	 * Pressure and flow at the end of a tube.
	 *
	 * @param radius of the tube
	 * @param sizes in place of its own and in their order
	 */
	<T extends CalculusFieldElement<T>> Flow<T> flow(Tone<T> tone, T radius, List<T> sizes);

	/** A wall. */
	record Stopped() implements Ending {
		@Override
		public <T extends CalculusFieldElement<T>> Flow<T> flow(Tone<T> tone, T radius, List<T> sizes) {
			return Flow.ofAdmittance(tone.number(0));
		}
	}

	/** The open air. */
	record Open(Radiation radiation) implements Ending {
		@Override
		public <T extends CalculusFieldElement<T>> Flow<T> flow(Tone<T> tone, T radius, List<T> sizes) {
			return Flow.ofImpedance(radiation.impedance(tone, radius));
		}
	}

	/**
	 * A pad that hangs over the rim and lengthens the hole.
	 *
	 * @param radiation of the hole without it
	 * @param length in m by which it lengthens
	 */
	record UnderPad(Radiation radiation, double length) implements Ending {
		@Override
		public double[] sizes() {
			return new double[] { length };
		}

		@Override
		public <T extends CalculusFieldElement<T>> Flow<T> flow(Tone<T> tone, T radius, List<T> sizes) {
			return Flow.ofImpedance(radiation.impedance(tone, radius).add(tone.inertance(radius, sizes.get(0))));
		}

		/**
		 * b / (3.5 (h/b)^0.8 (h/b + 3w/b)^−0.4 + 30 (h/r)^2.6): J.-P. Dalmont, C. J. Nederveen and N. Joly, J. Sound
		 * Vib. 244 (2001) 505–534, equation 48.
		 *
		 * @param radius b of the hole
		 * @param height h of the pad over the rim
		 * @param padRadius r
		 * @param wall w, width of the rim
		 */
		static <T extends CalculusFieldElement<T>> T lengthening(T radius, T height, T padRadius, T wall) {
			T high = height.divide(radius);
			T around = high.pow(0.8).multiply(3.5).divide(high.add(wall.multiply(3).divide(radius)).pow(0.4));
			return radius.divide(around.add(height.divide(padRadius).pow(2.6).multiply(30)));
		}
	}

	/**
	 * A narrower opening, with the mass that a step adds: a perforated pad, or what a finger leaves free of a hole,
	 * taken as a round opening of the same area (derived here, no source).
	 *
	 * @param opening its radius, at most that of the tube
	 * @param depth of the opening, 0 or more
	 * @param beyond what it ends in
	 */
	record Narrowed(double opening, double depth, Ending beyond) implements Ending {
		@Override
		public double[] sizes() {
			return DoubleStream.concat(DoubleStream.of(opening, depth), Arrays.stream(beyond.sizes())).toArray();
		}

		@Override
		public <T extends CalculusFieldElement<T>> Flow<T> flow(Tone<T> tone, T radius, List<T> sizes) {
			T narrow = sizes.get(0);
			Flow<T> outside = beyond.flow(tone, narrow, sizes.subList(2, sizes.size()));
			Flow<T> inside = tone.line(narrow).over(sizes.get(1)).before(outside);
			return TwoPort.series(Step.impedance(tone, narrow, radius)).before(inside);
		}
	}

	/** Two ways out beside each other. */
	record Both(Ending first, Ending second) implements Ending {
		@Override
		public double[] sizes() {
			return DoubleStream.concat(Arrays.stream(first.sizes()), Arrays.stream(second.sizes())).toArray();
		}

		@Override
		public <T extends CalculusFieldElement<T>> Flow<T> flow(Tone<T> tone, T radius, List<T> sizes) {
			int split = first.sizes().length;
			T one = first.flow(tone, radius, sizes.subList(0, split)).admittance();
			T other = second.flow(tone, radius, sizes.subList(split, sizes.size())).admittance();
			return Flow.ofAdmittance(one.add(other));
		}
	}

	/** Closed but for a leak. */
	record Leaking(Leak leak) implements Ending {
		@Override
		public double[] sizes() {
			return leak.sizes();
		}

		@Override
		public <T extends CalculusFieldElement<T>> Flow<T> flow(Tone<T> tone, T radius, List<T> sizes) {
			return Flow.ofAdmittance(leak.admittance(tone, sizes));
		}
	}
}
