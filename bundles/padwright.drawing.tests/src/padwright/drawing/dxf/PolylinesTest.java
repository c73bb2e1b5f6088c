package padwright.drawing.dxf;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.SplittableRandom;

import org.junit.jupiter.api.Test;

import padwright.drawing.dxf.Polylines.Polyline;
import padwright.drawing.scene.Transform;

class PolylinesTest {

	private static final double ROUNDING = 1e-9;

	/**
	 * A parabola bends alike everywhere, so that n equal pieces leave it by exactly 3/4 of the second difference of its handles
	 * over n². No piece fewer would do.
	 */
	@Test
	void aParabolaHasAsFewPiecesAsItCan() {
		SplittableRandom random = new SplittableRandom(71);
		for (int curve = 0; curve < 500; curve++) {
			double[] p = random.doubles(6, -20, 20).toArray();
			Polylines sink = new Polylines(Transform.NONE);
			sink.moveTo(p[0], p[1]);
			sink.curveTo(p[0] + (p[2] - p[0]) * 2 / 3, p[1] + (p[3] - p[1]) * 2 / 3, p[4] + (p[2] - p[4]) * 2 / 3,
					p[5] + (p[3] - p[5]) * 2 / 3, p[4], p[5]);
			List<double[]> points = sink.all().get(0).points();
			int pieces = points.size() - 1;
			double bend = Math.hypot(p[0] - 2 * p[2] + p[4], p[1] - 2 * p[3] + p[5]) / 4;
			assertTrue(bend / pieces / pieces <= Polylines.OFF + ROUNDING, pieces + " pieces are too few");
			assertTrue(bend / (pieces - 1) / (pieces - 1) > Polylines.OFF - ROUNDING, pieces + " pieces are too many");
			assertArrayEquals(new double[] { p[4], p[5] }, points.get(pieces), ROUNDING);
			double half = (pieces / 2) / (double) pieces;
			double[] middle = points.get(pieces / 2);
			assertEquals(parabola(p[0], p[2], p[4], half), middle[0], ROUNDING);
			assertEquals(parabola(p[1], p[3], p[5], half), middle[1], ROUNDING);
		}
	}

	private static double parabola(double from, double handle, double to, double t) {
		return (1 - t) * (1 - t) * from + 2 * t * (1 - t) * handle + t * t * to;
	}

	/** An S bends one way and then the other: the sharper of both counts, whichever comes first. */
	@Test
	void noCurveIsLeftByMoreThanItMay() {
		SplittableRandom random = new SplittableRandom(72);
		for (int curve = 0; curve < 200; curve++) {
			double[] p = random.doubles(8, -20, 20).toArray();
			Polylines sink = new Polylines(Transform.NONE);
			sink.moveTo(p[0], p[1]);
			sink.curveTo(p[2], p[3], p[4], p[5], p[6], p[7]);
			List<double[]> points = sink.all().get(0).points();
			int pieces = points.size() - 1;
			for (int piece = 0; piece < pieces; piece++) {
				double t = (piece + 0.5) / pieces;
				double u = 1 - t;
				double x = u * u * u * p[0] + 3 * u * u * t * p[2] + 3 * u * t * t * p[4] + t * t * t * p[6];
				double y = u * u * u * p[1] + 3 * u * u * t * p[3] + 3 * u * t * t * p[5] + t * t * t * p[7];
				double[] from = points.get(piece);
				double[] to = points.get(piece + 1);
				double off = Math.hypot(x - (from[0] + to[0]) / 2, y - (from[1] + to[1]) / 2);
				assertTrue(off <= Polylines.OFF + ROUNDING, "off by " + off);
			}
		}
	}

	@Test
	void outlinesOfSeveralPartsAreSeveralPolylines() {
		Polylines sink = new Polylines(Transform.translation(10, 20));
		sink.moveTo(0, 0);
		sink.lineTo(1, 0);
		sink.lineTo(1, 1);
		sink.close();
		sink.moveTo(5, 5);
		sink.lineTo(6, 5);
		List<Polyline> all = sink.all();
		assertEquals(2, all.size());
		assertTrue(all.get(0).isClosed());
		assertFalse(all.get(1).isClosed());
		assertArrayEquals(new double[] { 11, 21 }, all.get(0).points().get(2));
		assertEquals(2, all.get(1).points().size());
	}

	@Test
	void aPointAloneIsNoPolyline() {
		Polylines sink = new Polylines(Transform.NONE);
		sink.moveTo(1, 1);
		sink.moveTo(2, 2);
		sink.lineTo(3, 2);
		assertEquals(1, sink.all().size());
	}
}
