package padwright.engine.acoustics;

import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;

import org.hipparchus.CalculusFieldElement;

/**
 * A way out that should not be there. A fine one is all friction, a wide one all mass; both follow from the flow of air
 * between walls, with no coefficient to be measured.
 */
public sealed interface Leak {

	/** All that it depends on, in m. */
	double[] sizes();

	/** Flow over pressure, 0 if it is shut. */
	<T extends CalculusFieldElement<T>> T admittance(Tone<T> tone, List<T> sizes);

	/**
	 * A round hole: friction as in a tube (Zwikker and Kosten), and the air that moves with it at its ends.
	 *
	 * @param radius in m, more than 0
	 * @param length in m, more than 0
	 * @param ends what the air at both ends adds to the length, in radii: 0 to 2, about 1.6 between two walls
	 */
	record Round(double radius, double length, double ends) implements Leak {

		/** @throws IllegalArgumentException if one is out of range */
		public Round {
			Sizes.requirePositive("radius of a leak", radius);
			Sizes.requirePositive("length of a leak", length);
			Sizes.requireBetween("ends of a leak in radii", ends, 0, 2);
		}

		@Override
		public double[] sizes() {
			return new double[] { radius, length };
		}

		@Override
		public <T extends CalculusFieldElement<T>> T admittance(Tone<T> tone, List<T> sizes) {
			T b = sizes.get(0);
			Line<T> line = tone.line(b);
			return line.gamma().multiply(line.impedance()).multiply(sizes.get(1))
					.add(tone.inertance(b, b.multiply(ends))).reciprocal();
		}
	}

	/**
	 * A slit between two flat walls, much wider than high: w h (1 − tanh(u)/u) / (s ρ l) with u = (h/2) √(sρ/μ), which
	 * is w h³ / (12 µ l) for a fine one.
	 *
	 * @param width w along the rim, in m, 0 or more
	 * @param gap h in m; 0 or less is shut
	 * @param land l, how far the air goes through it, in m, more than 0
	 */
	record Slit(double width, double gap, double land) implements Leak {

		/** Below this |u| the difference is taken by its series. */
		private static final double FINE = 0.1;

		/** @throws IllegalArgumentException if a size is out of range */
		public Slit {
			Sizes.requireBetween("width of a slit", width, 0, Double.MAX_VALUE);
			Sizes.requireBetween("gap of a slit", gap, -1, 1);
			Sizes.requirePositive("land of a slit", land);
		}

		@Override
		public double[] sizes() {
			return new double[] { width, gap, land };
		}

		@Override
		public <T extends CalculusFieldElement<T>> T admittance(Tone<T> tone, List<T> sizes) {
			return gap > 0 ? open(tone, sizes) : tone.number(0);
		}

		private <T extends CalculusFieldElement<T>> T open(Tone<T> tone, List<T> sizes) {
			T half = sizes.get(1).multiply(0.5);
			T square = half.multiply(half).multiply(tone.s())
					.multiply(tone.air().density() / tone.air().viscosity());
			T moving = sizes.get(0).multiply(sizes.get(1)).multiply(share(square, tone.numbers()));
			return moving.divide(tone.s().multiply(tone.air().density()).multiply(sizes.get(2)));
		}

		/** 1 − tanh(u)/u from u². */
		private static <T extends CalculusFieldElement<T>> T share(T square, Numbers<T> numbers) {
			if (numbers.value(square).norm() < FINE * FINE) {
				return Series.at(square, 0, 1 / 3.0, -2 / 15.0, 17 / 315.0, -62 / 2835.0, 1382 / 155_925.0);
			}
			T u = square.sqrt();
			return u.tanh().divide(u).negate().add(1);
		}
	}

	/**
	 * The slit between a pad and its rim, whose gap changes along the rim: slits beside each other.
	 *
	 * @param radius of the middle of the rim in m, more than 0
	 * @param land width of the rim in m, more than 0
	 * @param gaps in m at places equally far apart around the rim, such as the 24 half hours of the clock; 0 or less
	 *        is shut
	 */
	record Rim(double radius, double land, List<Double> gaps) implements Leak {

		/** @throws IllegalArgumentException if a size is out of range, or there is no gap */
		public Rim {
			Sizes.requirePositive("radius of a rim", radius);
			Sizes.requirePositive("width of a rim", land);
			gaps = List.copyOf(gaps);
			if (gaps.isEmpty()) {
				throw new IllegalArgumentException("a leaking rim needs a gap at one place at least");
			}
			gaps.forEach(gap -> Sizes.requireBetween("gap at a rim", gap, -1, 1));
		}

		@Override
		public double[] sizes() {
			return DoubleStream.concat(DoubleStream.of(radius, land), gaps.stream().mapToDouble(Double::doubleValue))
					.toArray();
		}

		@Override
		public <T extends CalculusFieldElement<T>> T admittance(Tone<T> tone, List<T> sizes) {
			T width = sizes.get(0).multiply(2 * Math.PI / gaps.size());
			return IntStream.range(0, gaps.size()).filter(place -> gaps.get(place) > 0)
					.mapToObj(place -> new Slit(0, gaps.get(place), land).admittance(tone,
							List.of(width, sizes.get(2 + place), sizes.get(1))))
					.reduce(tone.number(0), (one, other) -> one.add(other));
		}
	}
}
