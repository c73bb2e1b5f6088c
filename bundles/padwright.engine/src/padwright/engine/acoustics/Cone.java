package padwright.engine.acoustics;

import java.util.List;
import java.util.stream.IntStream;

import org.hipparchus.CalculusFieldElement;
import org.hipparchus.util.Binary64;
import org.hipparchus.util.FieldSinhCosh;

/**
 * A straight taper, or a cylinder where both radii are equal, with losses as in a tube of the logarithmic mean radius.
 * Since losses are not that simple in a long taper, divide one into pieces: {@link #pieces(double, double)}.
 * Formulas: A. Lefebvre, G. P. Scavone and J. Kergomard, External tonehole interactions in woodwind instruments, Acta
 * Acustica 99 (2013) 975–985; A. Chaigne and J. Kergomard, Acoustics of Musical Instruments (Springer 2016).
 *
 * @param length in m, 0 or more
 * @param near radius in m at the near end, more than 0
 * @param far radius in m at the far end, more than 0
 */
record Cone(double length, double near, double far) implements Element {

	/** By how much the radius may change in one piece; pieces of half of that move no pitch by 0.001 cents. */
	private static final double FINE = 0.02;
	/** Up to this share of difference to sum, the logarithmic mean is taken by its series. */
	private static final double NEARLY_EQUAL = 0.05;

	static Cone cylinder(double length, double radius) {
		return new Cone(length, radius, radius);
	}

	/** How many pieces a taper between these radii should be divided into. */
	static int pieces(double near, double far) {
		return Math.max(1, (int) Math.ceil(Math.abs(StrictMath.log(far / near)) / FINE));
	}

	/** This taper in pieces of equal length. */
	List<Element> divided(int pieces) {
		return IntStream.range(0, pieces).<Element>mapToObj(
				piece -> new Cone(length / pieces, radiusAt(piece, pieces), radiusAt(piece + 1, pieces))).toList();
	}

	private double radiusAt(int piece, int pieces) {
		return near + (far - near) * piece / pieces;
	}

	@Override
	public double[] sizes() {
		return new double[] { length, near, far, mean(new Binary64(near), new Binary64(far)).getReal() };
	}

	@Override
	public <T extends CalculusFieldElement<T>> TwoPort<T> twoPort(Tone<T> tone, List<T> sizes) {
		if (length == 0) {
			return TwoPort.series(tone.number(0));
		}
		boolean isCylinder = near == far && tone.numbers().isPlain();
		return isCylinder ? tone.line(sizes.get(1)).over(sizes.get(0))
				: twoPort(tone.line(sizes.get(3)), sizes);
	}

	private static <T extends CalculusFieldElement<T>> TwoPort<T> twoPort(Line<T> line, List<T> sizes) {
		T r1 = sizes.get(1);
		T r2 = sizes.get(2);
		T way = line.gamma().multiply(sizes.get(0));
		FieldSinhCosh<T> wave = way.sinhCosh();
		T wider = r2.divide(r1);
		T narrower = r1.divide(r2);
		T impedance = line.impedance().multiply(sizes.get(3).multiply(sizes.get(3)).divide(r1.multiply(r2)));
		T from = wider.subtract(1).divide(way);
		T to = narrower.negate().add(1).divide(way);
		T a = wider.multiply(wave.cosh()).subtract(wave.sinh().multiply(from));
		T d = narrower.multiply(wave.cosh()).add(wave.sinh().multiply(to));
		T c = from.multiply(to).negate().add(1).multiply(wave.sinh()).add(from.subtract(to).multiply(wave.cosh()));
		return new TwoPort<>(a, impedance.multiply(wave.sinh()), c.divide(impedance), d);
	}

	/** (r₂ − r₁) / ln(r₂ / r₁), by the series of the area tangent where the two are nearly equal. */
	static <T extends CalculusFieldElement<T>> T mean(T r1, T r2) {
		T difference = r2.subtract(r1);
		T sum = r1.add(r2);
		if (Math.abs(difference.getReal()) > NEARLY_EQUAL * sum.getReal()) {
			return difference.divide(r2.divide(r1).log());
		}
		T share = difference.divide(sum);
		T tangent = Series.at(share.multiply(share), 1, 1 / 3.0, 1 / 5.0, 1 / 7.0, 1 / 9.0, 1 / 11.0);
		return sum.divide(tangent.multiply(2));
	}
}
