package padwright.engine.rim;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;

import org.junit.jupiter.api.Test;

import padwright.engine.clock.ClockHour;
import padwright.engine.length.Length;
import padwright.engine.rim.ReferencePlane.Point;

class ReferencePlaneTest {

	/**
	 * R's data set {@code trees}: girth, height and volume of 31 felled cherry trees (Ryan, Joiner and Ryan, The Minitab
	 * Student Handbook, 1976). The coefficients of lm(Volume ~ Girth + Height), -57.9877, 4.7082, 0.3393, are from
	 * memory, unverified; the data too.
	 */
	@Test
	void planeOfRsTrees() {
		double[] girth = { 8.3, 8.6, 8.8, 10.5, 10.7, 10.8, 11.0, 11.0, 11.1, 11.2, 11.3, 11.4, 11.4, 11.7, 12.0, 12.9,
				12.9, 13.3, 13.7, 13.8, 14.0, 14.2, 14.5, 16.0, 16.3, 17.3, 17.5, 17.9, 18.0, 18.0, 20.6 };
		double[] height = { 70, 65, 63, 72, 81, 83, 66, 75, 80, 75, 79, 76, 76, 69, 75, 74, 85, 86, 71, 64, 78, 80, 74,
				72, 77, 81, 82, 80, 80, 80, 87 };
		double[] volume = { 10.3, 10.3, 10.2, 16.4, 18.8, 19.7, 15.6, 18.2, 22.6, 19.9, 24.2, 21.0, 21.4, 21.3, 19.1,
				22.2, 33.8, 27.4, 25.7, 24.9, 34.5, 31.7, 36.3, 38.3, 42.6, 55.4, 55.7, 58.3, 51.5, 51.0, 77.0 };
		ReferencePlane plane = ReferencePlane.of(IntStream.range(0, girth.length)
				.mapToObj(tree -> new Point(girth[tree], height[tree], volume[tree])).toList());
		assertEquals(-57.9877, plane.height(), 5e-5);
		assertEquals(4.7082, plane.slopeX(), 5e-5);
		assertEquals(0.3393, plane.slopeY(), 5e-5);
	}

	/** Derived here: cos 2θ is a saddle, which no plane follows. */
	@Test
	void aSaddleHasNoTilt() {
		ReferencePlane plane = ReferencePlane.of(around(angle -> Math.cos(2 * angle)));
		assertEquals(0, plane.fromTightToOpen(), 1e-12);
	}

	/** Derived here: of 2 + 0.3 cos θ + cos 2θ the plane is 2 + 0.3 y. */
	@Test
	void aTiltIsToldFromASaddle() {
		ReferencePlane plane = ReferencePlane.of(around(angle -> 2 + 0.3 * Math.cos(angle) + Math.cos(2 * angle)));
		assertEquals(2, plane.height(), 1e-12);
		assertEquals(0, plane.slopeX(), 1e-12);
		assertEquals(0.3, plane.slopeY(), 1e-12);
		assertEquals(0.6, plane.fromTightToOpen(), 1e-12);
		assertEquals(ClockHour.ofHour(12), plane.openHour());
	}

	@Test
	void gapsAtUnevenHoursGiveTheirPlane() {
		SplittableRandom random = new SplittableRandom(7);
		for (int round = 0; round < 500; round++) {
			int open = random.nextInt(ClockHour.STATIONS);
			List<Point> points = new ArrayList<>();
			for (int station : new int[] { 0, 3, 7, random.nextInt(8, 20), 23 }) {
				ClockHour hour = new ClockHour(station);
				double gap = 380_000 + 20_000 * Math.cos(hour.angle() - new ClockHour(open).angle());
				points.add(Point.of(hour, new Length(Math.round(gap))));
			}
			ReferencePlane plane = ReferencePlane.of(points);
			assertEquals(380_000, plane.height(), 5);
			assertEquals(40_000, plane.fromTightToOpen(), 10);
			assertEquals(new ClockHour(open), plane.openHour());
		}
	}

	@Test
	void pointsOnOneLineAreRefused() {
		List<Point> line = List.of(new Point(0, 0, 1), new Point(1, 1, 2), new Point(2, 2, 5));
		assertThrows(IllegalArgumentException.class, () -> ReferencePlane.of(line));
		assertThrows(IllegalArgumentException.class, () -> ReferencePlane.of(line.subList(0, 2)));
		List<Point> alongAnAxis = List.of(new Point(0, 3, 1), new Point(1, 3, 2), new Point(2, 3, 5));
		assertThrows(IllegalArgumentException.class, () -> ReferencePlane.of(alongAnAxis));
		for (int slope = 1; slope <= 30; slope++) {
			double rise = 1e5 / 7 * slope;
			List<Point> straightButForRounding = IntStream.range(0, 9)
					.mapToObj(i -> new Point(1e6 + i * 1e5 / 3, i * rise, i)).toList();
			assertThrows(IllegalArgumentException.class, () -> ReferencePlane.of(straightButForRounding));
		}
	}

	@Test
	void threePointsGiveThePlaneThroughThem() {
		ReferencePlane plane = ReferencePlane.of(List.of(new Point(0, 0, 5), new Point(2, 0, 9), new Point(0, 4, 3)));
		assertEquals(5, plane.height(), 1e-12);
		assertEquals(2, plane.slopeX(), 1e-12);
		assertEquals(-0.5, plane.slopeY(), 1e-12);
	}

	private static List<Point> around(DoubleUnaryOperator z) {
		return IntStream.range(0, 12).mapToDouble(hour -> 2 * Math.PI * hour / 12)
				.mapToObj(angle -> new Point(Math.sin(angle), Math.cos(angle), z.applyAsDouble(angle))).toList();
	}
}
