package padwright.engine.rim;

/** Sums over small vectors, in the order of their elements. */
final class Vectors {

	private Vectors() {
	}

	static double dot(double[] a, double[] b) {
		double sum = 0;
		for (int i = 0; i < a.length; i++) {
			sum += a[i] * b[i];
		}
		return sum;
	}

	/** Adds {@code factor} times {@code other} to {@code sum}. */
	static void add(double[] sum, double factor, double[] other) {
		for (int i = 0; i < sum.length; i++) {
			sum[i] += factor * other[i];
		}
	}
}
