package padwright.engine.acoustics;

import java.util.List;

/**
 * Input impedances in the plainest way: every matrix written out and multiplied from the upper end, Bessel functions by
 * their integrals, complex numbers as pairs. Nothing is shared with the engine but the sizes.
 */
final class PlainReference {

	private final AirConstants air;
	private final double omega;

	PlainReference(AirConstants air, double hertz) {
		this.air = air;
		omega = 2 * Math.PI * hertz;
	}

	/** A tube of cylinders and cones as length, near and far radius in turn, with holes between. */
	double[] impedance(List<double[][][]> matrices, double[] end) {
		double[][][] product = { { num(1), num(0) }, { num(0), num(1) } };
		for (double[][][] matrix : matrices) {
			product = times(product, matrix);
		}
		return div(add(mul(product[0][0], end), product[0][1]), add(mul(product[1][0], end), product[1][1]));
	}

	double[][][] cone(double length, double r1, double r2) {
		double mean = r1 == r2 ? r1 : (r2 - r1) / Math.log(r2 / r1);
		double[] gamma = gamma(mean);
		double[] zc = mul(lineImpedance(mean), num(mean * mean / (r1 * r2)));
		double[] cosh = cosh(mul(gamma, num(length)));
		double[] sinh = sinh(mul(gamma, num(length)));
		double inverse1 = (r2 - r1) / (r1 * length);
		double inverse2 = (r2 - r1) / (r2 * length);
		double[] a = sub(mul(num(r2 / r1), cosh), mul(div(sinh, gamma), num(inverse1)));
		double[] d = add(mul(num(r1 / r2), cosh), mul(div(sinh, gamma), num(inverse2)));
		double[] first = mul(sub(num(1), div(num(inverse1 * inverse2), mul(gamma, gamma))), sinh);
		double[] second = mul(num(inverse1 - inverse2), div(cosh, gamma));
		return new double[][][] { { a, mul(zc, sinh) }, { div(add(first, second), zc), d } };
	}

	double[][][] series(double[] impedance) {
		return new double[][][] { { num(1), impedance }, { num(0), num(1) } };
	}

	double[][][] shunt(double[] impedance) {
		return new double[][][] { { num(1), num(0) }, { div(num(1), impedance), num(1) } };
	}

	/** Dubos's hole, as half of the series impedance, the shunt, and the other half; closed if {@code end} is null. */
	List<double[][][]> hole(double b, double t, double a, double[] end) {
		double d = b / a;
		double inner = b * (0.82 - 0.193 * d - 1.09 * d * d + 1.27 * d * d * d - 0.71 * d * d * d * d)
				+ b * d / 8 * (1 + 0.207 * d * d * d);
		double[] along = mass(b * (-0.37 + 0.087 * d) * d * d, a);
		double[][][] chimney = cone(t, b, b);
		double[] foot = end == null ? div(chimney[0][0], chimney[1][0])
				: div(add(mul(chimney[0][0], end), chimney[0][1]), add(mul(chimney[1][0], end), chimney[1][1]));
		double[] into = add(sub(mass(inner, b), div(along, num(4))), foot);
		return List.of(series(div(along, num(2))), shunt(into), series(div(along, num(2))));
	}

	/** jωρl / (πr²). */
	double[] mass(double length, double radius) {
		return new double[] { 0, omega * air.density() * length / (Math.PI * radius * radius) };
	}

	/** First order, causal: jx / (1/η + βjx). */
	double[] radiation(double radius, double eta, double beta) {
		double x = omega / air.speed() * radius;
		return mul(num(air.density() * air.speed() / (Math.PI * radius * radius)),
				div(new double[] { 0, x }, new double[] { 1 / eta, beta * x }));
	}

	double[] slit(double width, double gap, double land) {
		double[] s = sqrt(new double[] { 0, omega * air.density() / air.viscosity() });
		s = mul(s, num(gap / 2));
		double[] moving = sub(num(1), div(div(sinh(s), cosh(s)), s));
		return div(new double[] { 0, omega * air.density() * land / (width * gap) }, moving);
	}

	private double[] gamma(double radius) {
		return sqrt(mul(perLength(radius), acrossLength(radius)));
	}

	private double[] lineImpedance(double radius) {
		return sqrt(div(perLength(radius), acrossLength(radius)));
	}

	private double[] perLength(double radius) {
		double[] z = mul(sqrt(new double[] { 0, -omega * air.density() / air.viscosity() }), num(radius));
		double area = Math.PI * radius * radius;
		return div(new double[] { 0, omega * air.density() / area }, sub(num(1), ratio(z)));
	}

	private double[] acrossLength(double radius) {
		double[] z = mul(sqrt(new double[] { 0, -omega * air.density() * air.heatCapacity() / air.conductivity() }),
				num(radius));
		double area = Math.PI * radius * radius;
		return mul(new double[] { 0, omega * area / (air.density() * air.speed() * air.speed()) },
				add(num(1), mul(num(air.heatRatio() - 1), ratio(z))));
	}

	/** 2 J₁(z) / (z J₀(z)). */
	private static double[] ratio(double[] z) {
		double[] zero = num(0);
		double[] one = num(0);
		int points = 300 + (int) (4 * Math.hypot(z[0], z[1]));
		for (int point = 0; point < 2 * points; point++) {
			double angle = Math.PI * point / points;
			double[] turned = mul(z, num(Math.sin(angle)));
			zero = add(zero, cos(turned));
			one = add(one, cos(sub(num(angle), turned)));
		}
		return div(mul(num(2), one), mul(z, zero));
	}

	private static double[][][] times(double[][][] m, double[][][] n) {
		double[][][] product = new double[2][2][];
		for (int i = 0; i < 2; i++) {
			for (int j = 0; j < 2; j++) {
				product[i][j] = add(mul(m[i][0], n[0][j]), mul(m[i][1], n[1][j]));
			}
		}
		return product;
	}

	static double[] num(double real) {
		return new double[] { real, 0 };
	}

	static double[] add(double[] x, double[] y) {
		return new double[] { x[0] + y[0], x[1] + y[1] };
	}

	static double[] sub(double[] x, double[] y) {
		return new double[] { x[0] - y[0], x[1] - y[1] };
	}

	static double[] mul(double[] x, double[] y) {
		return new double[] { x[0] * y[0] - x[1] * y[1], x[0] * y[1] + x[1] * y[0] };
	}

	static double[] div(double[] x, double[] y) {
		double square = y[0] * y[0] + y[1] * y[1];
		return new double[] { (x[0] * y[0] + x[1] * y[1]) / square, (x[1] * y[0] - x[0] * y[1]) / square };
	}

	/** The root with a positive real part. */
	private static double[] sqrt(double[] x) {
		double size = Math.sqrt(Math.hypot(x[0], x[1]));
		double angle = Math.atan2(x[1], x[0]) / 2;
		return new double[] { size * Math.cos(angle), size * Math.sin(angle) };
	}

	private static double[] exp(double[] x) {
		return new double[] { Math.exp(x[0]) * Math.cos(x[1]), Math.exp(x[0]) * Math.sin(x[1]) };
	}

	private static double[] cosh(double[] x) {
		return div(add(exp(x), exp(sub(num(0), x))), num(2));
	}

	private static double[] sinh(double[] x) {
		return div(sub(exp(x), exp(sub(num(0), x))), num(2));
	}

	private static double[] cos(double[] x) {
		return cosh(new double[] { -x[1], x[0] });
	}
}
