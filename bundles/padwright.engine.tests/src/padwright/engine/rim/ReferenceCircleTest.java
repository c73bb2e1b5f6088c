package padwright.engine.rim;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.SplittableRandom;
import java.util.function.IntToDoubleFunction;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import padwright.engine.rim.ReferenceCircle.Point;

class ReferenceCircleTest {

	private static final double CLOSE = 1e-9;

	/** Five points and their circle as in the tests of Apache Commons Math (CircleVectorial), there to 1e-6. */
	@Test
	void asPublished() {
		ReferenceCircle circle = ReferenceCircle.of(List.of(new Point(30, 68), new Point(50, -6), new Point(110, -20),
				new Point(35, 15), new Point(45, 97)));
		assertEquals(96.07590211815305, circle.x(), 1e-6);
		assertEquals(48.13516790438953, circle.y(), 1e-6);
		assertEquals(69.96016176931406, circle.radius(), 1e-6);
	}

	@Test
	void pointsOfACircleGiveThatCircle() {
		List<Point> points = around(3, -7, 9, hour -> 0);
		ReferenceCircle circle = ReferenceCircle.of(points);
		assertEquals(3, circle.x(), CLOSE);
		assertEquals(-7, circle.y(), CLOSE);
		assertEquals(9, circle.radius(), CLOSE);
		assertEquals(0, circle.roundness(points), CLOSE);
	}

	/** Two lobes of height 0.01 on even stations move neither centre nor radius. */
	@Test
	void twoLobesAreRoundnessAlone() {
		List<Point> points = around(0, 0, 8, hour -> 0.01 * StrictMath.cos(2 * angle(hour)));
		ReferenceCircle circle = ReferenceCircle.of(points);
		assertEquals(0, circle.x(), CLOSE);
		assertEquals(0, circle.y(), CLOSE);
		assertEquals(8, circle.radius(), CLOSE);
		assertEquals(0.02, circle.roundness(points), CLOSE);
	}

	/** No circle near by has a smaller sum of squares. */
	@ParameterizedTest
	@ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
	void theSumOfSquaresIsLeast(long seed) {
		SplittableRandom random = new SplittableRandom(seed);
		List<Point> points = around(random.nextDouble(50), random.nextDouble(50), 5 + random.nextDouble(10),
				hour -> random.nextDouble(-0.5, 0.5));
		ReferenceCircle best = ReferenceCircle.of(points);
		double least = squares(best, points);
		for (double step : new double[] {1e-3, -1e-3}) {
			assertTrue(squares(new ReferenceCircle(best.x() + step, best.y(), best.radius()), points) > least);
			assertTrue(squares(new ReferenceCircle(best.x(), best.y() + step, best.radius()), points) > least);
			assertTrue(squares(new ReferenceCircle(best.x(), best.y(), best.radius() + step), points) > least);
		}
	}

	@Test
	void threePointsGiveTheCircleThroughThem() {
		ReferenceCircle circle = ReferenceCircle.of(List.of(new Point(8, -7), new Point(3, -2), new Point(-1, -10)));
		assertEquals(3, circle.x(), CLOSE);
		assertEquals(-7, circle.y(), CLOSE);
		assertEquals(5, circle.radius(), CLOSE);
	}

	/** Where a part of the rim alone was measured, sums that are nothing around the whole of it are not. */
	@ParameterizedTest
	@ValueSource(longs = {1, 2, 3, 4, 5, 6})
	void theSumOfSquaresIsLeastOnAShortArcToo(long seed) {
		SplittableRandom random = new SplittableRandom(seed);
		List<Point> arc = IntStream.range(0, 8).mapToObj(step -> {
			double distance = 9 + random.nextDouble(-0.001, 0.001);
			return new Point(40 + distance * StrictMath.cos(0.05 * step), -25 + distance * StrictMath.sin(0.05 * step));
		}).toList();
		ReferenceCircle best = ReferenceCircle.of(arc);
		assertEquals(0, arc.stream().mapToDouble(best::deviation).sum(), CLOSE);
		assertEquals(0, pull(best, arc, point -> point.x() - best.x()), CLOSE);
		assertEquals(0, pull(best, arc, point -> point.y() - best.y()), CLOSE);
	}

	/** How the points together pull the centre in a direction. */
	private static double pull(ReferenceCircle circle, List<Point> points, ToDoubleFunction<Point> along) {
		return points.stream().mapToDouble(point -> circle.deviation(point) * along.applyAsDouble(point)
				/ (circle.radius() + circle.deviation(point))).sum();
	}

	/** The last digits of a floating-point number make no circle of a line. */
	@Test
	void aLineThatIsStraightButForRoundingIsRefused() {
		for (int slope = 1; slope <= 30; slope++) {
			double rise = 1e5 / 7 * slope;
			List<Point> line = IntStream.range(0, 9).mapToObj(i -> new Point(1e6 + i * 1e5 / 3, i * rise)).toList();
			assertThrows(IllegalArgumentException.class, () -> ReferenceCircle.of(line), "slope " + slope);
		}
	}

	@Test
	void whatIsNoCircleIsRefused() {
		assertThrows(IllegalArgumentException.class,
				() -> ReferenceCircle.of(List.of(new Point(0, 0), new Point(1, 0))));
		assertThrows(IllegalArgumentException.class,
				() -> ReferenceCircle.of(List.of(new Point(0, 0), new Point(1, 1), new Point(2, 2), new Point(5, 5))));
	}

	private static double angle(int hour) {
		return hour * Math.PI / 6;
	}

	private static List<Point> around(double x, double y, double radius, IntToDoubleFunction lift) {
		return IntStream.range(0, 12).mapToObj(hour -> {
			double distance = radius + lift.applyAsDouble(hour);
			return new Point(x + distance * StrictMath.cos(angle(hour)), y + distance * StrictMath.sin(angle(hour)));
		}).toList();
	}

	private static double squares(ReferenceCircle circle, List<Point> points) {
		return points.stream().mapToDouble(circle::deviation)
				.map(deviation -> deviation * deviation).sum();
	}
}
