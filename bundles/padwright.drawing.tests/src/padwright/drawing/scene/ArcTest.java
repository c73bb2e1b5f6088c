package padwright.drawing.scene;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.SplittableRandom;

import org.junit.jupiter.api.Test;

class ArcTest {

	/** A cubic arc of a quarter turn leaves its circle by at most 0.0273 % of the radius (derived here). */
	@Test
	void curvesStayOnTheirCircle() {
		SplittableRandom random = new SplittableRandom(1);
		for (int round = 0; round < 200; round++) {
			double radius = random.nextDouble(0.5, 40);
			CircleDistance distance = new CircleDistance(radius);
			new ArcTracer(0, 0).trace(distance, radius, random.nextDouble(0, 6), random.nextDouble(-6.2, 6.2));
			assertEquals(0, distance.worst, radius * 0.0003);
		}
	}

	@Test
	void sectorRunsClockwiseFromTheTop() {
		Bounds bounds = new RingSector(0, 0, 4, 5, 0, Math.PI / 2).bounds();
		assertEquals(0, bounds.left(), 1e-9);
		assertEquals(5, bounds.right(), 1e-9);
		assertEquals(-5, bounds.top(), 1e-9);
		assertEquals(0, bounds.bottom(), 1e-9);
	}

	@Test
	void impossibleShapesAreRefused() {
		assertThrows(IllegalArgumentException.class, () -> new RingSector(0, 0, 5, 4, 0, 1));
		assertThrows(IllegalArgumentException.class, () -> new RingSector(0, 0, 4, 5, 0, 2 * Math.PI));
		assertThrows(IllegalArgumentException.class, () -> new Circle(0, 0, 0));
		assertThrows(IllegalArgumentException.class, () -> new Circle(0, 0, Double.NaN));
		assertThrows(IllegalArgumentException.class, () -> new Rectangle(0, 0, -1, 1));
		assertThrows(IllegalArgumentException.class, () -> Stroke.of(Ink.BLACK, 0));
		assertThrows(IllegalArgumentException.class, () -> Stroke.of(Ink.BLACK, 1).dashed(1, 0));
		assertThrows(IllegalArgumentException.class, () -> new Ink(0, 256, 0));
	}

	private static final class CircleDistance implements PathSink {

		private final double radius;
		private double fromX = Double.NaN;
		private double fromY;
		private double worst;

		private CircleDistance(double radius) {
			this.radius = radius;
		}

		@Override
		public void moveTo(double x, double y) {
			throw new AssertionError("an arc goes on from where it is");
		}

		@Override
		public void lineTo(double x, double y) {
			throw new AssertionError("an arc has no straight line");
		}

		@Override
		public void curveTo(double x1, double y1, double x2, double y2, double x, double y) {
			for (double t = 0; !Double.isNaN(fromX) && t <= 1; t += 0.05) {
				double u = 1 - t;
				double px = u * u * u * fromX + 3 * u * u * t * x1 + 3 * u * t * t * x2 + t * t * t * x;
				double py = u * u * u * fromY + 3 * u * u * t * y1 + 3 * u * t * t * y2 + t * t * t * y;
				worst = Math.max(worst, Math.abs(Math.hypot(px, py) - radius));
			}
			fromX = x;
			fromY = y;
			worst = Math.max(worst, Math.abs(Math.hypot(x, y) - radius));
		}

		@Override
		public void close() {
			throw new AssertionError("an arc is open");
		}
	}
}
