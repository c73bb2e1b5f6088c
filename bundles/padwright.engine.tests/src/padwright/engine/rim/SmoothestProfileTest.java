package padwright.engine.rim;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

import org.junit.jupiter.api.Test;

import padwright.engine.clock.ClockHour;

/** The conditions of Karush, Kuhn and Tucker, which for a convex programme are proof of the optimum. */
class SmoothestProfileTest {

	private static final double ON_THE_BOUND = 1e-4;

	@Test
	void meetsTheConditionsOfOptimality() {
		SplittableRandom random = new SplittableRandom(1983);
		for (int run = 0; run < 4_000; run++) {
			List<RimReading> readings = RandomReadings.next(random);
			FourierBasis basis = FourierBasis.ofOrder(RimFit.order(readings));
			LeastViolation least = LeastViolation.of(readings, basis);
			StationBounds bounds = least.total() < 1e-3 ? StationBounds.of(readings) : least.bounds();

			double[] gaps = SmoothestProfile.within(bounds, basis);

			assertWithin(bounds, gaps, readings);
			assertStationary(bounds, gaps, basis, readings);
			assertTouchesALowerBound(bounds, gaps, readings);
		}
	}

	private static void assertWithin(StationBounds bounds, double[] gaps, List<RimReading> readings) {
		for (int station = 0; station < gaps.length; station++) {
			assertTrue(gaps[station] > bounds.lower()[station] - ON_THE_BOUND, readings::toString);
			assertTrue(gaps[station] < bounds.upper()[station] + ON_THE_BOUND, readings::toString);
		}
	}

	/** The roughness' gradient is a sum of lower bounds' normals upwards and upper bounds' downwards, where touched. */
	private static void assertStationary(StationBounds bounds, double[] gaps, FourierBasis basis,
			List<RimReading> readings) {
		List<double[]> normals = new ArrayList<>();
		for (int station = 0; station < gaps.length; station++) {
			if (gaps[station] < bounds.lower()[station] + ON_THE_BOUND) {
				normals.add(normal(station, 1, basis));
			}
			if (gaps[station] > bounds.upper()[station] - ON_THE_BOUND) {
				normals.add(normal(station, -1, basis));
			}
		}
		double[] gradient = scaledGradient(gaps, basis);
		double enough = 1e-6 * (1 + Math.sqrt(Vectors.dot(gradient, gradient)));
		double distance = NonNegativeLeastSquares.distance(normals.toArray(double[][]::new), gradient, enough);
		assertTrue(distance <= enough, () -> distance + " more than " + enough + " from " + readings);
	}

	private static double[] normal(int station, int sign, FourierBasis basis) {
		double[] normal = new double[basis.size() + 1];
		normal[0] = sign;
		for (int function = 0; function < basis.size(); function++) {
			int n = function / 2 + 1;
			double angle = n * new ClockHour(station).angle();
			normal[function + 1] = sign * (function % 2 == 0 ? Math.cos(angle) : Math.sin(angle)) / (n * n);
		}
		return normal;
	}

	/** With respect to the mean (none) and to n² times each amplitude. */
	private static double[] scaledGradient(double[] gaps, FourierBasis basis) {
		double[] gradient = new double[basis.size() + 1];
		for (int function = 0; function < basis.size(); function++) {
			int n = function / 2 + 1;
			for (int station = 0; station < gaps.length; station++) {
				double angle = n * new ClockHour(station).angle();
				gradient[function + 1] += n * n * gaps[station]
						* (function % 2 == 0 ? Math.cos(angle) : Math.sin(angle)) * 2 / gaps.length;
			}
		}
		return gradient;
	}

	private static void assertTouchesALowerBound(StationBounds bounds, double[] gaps, List<RimReading> readings) {
		double nearest = Double.POSITIVE_INFINITY;
		for (int station = 0; station < gaps.length; station++) {
			nearest = Math.min(nearest, gaps[station] - bounds.lower()[station]);
		}
		assertEquals(0, nearest, ON_THE_BOUND, readings::toString);
	}

	@Test
	void hasNoHarmonicsAboveItsOrder() {
		SplittableRandom random = new SplittableRandom(8);
		for (int run = 0; run < 500; run++) {
			List<RimReading> readings = RandomReadings.next(random);
			RimProfile profile = RimFit.fit(readings).profile();
			for (int n = RimFit.order(readings) + 1; n < 12; n++) {
				assertTrue(Harmonic.of(profile, n).amplitude().nanometres() <= 1, readings::toString);
			}
		}
	}
}
