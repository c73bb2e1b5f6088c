package padwright.drawing.scene;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.geom.Line2D;
import java.util.List;
import java.util.SplittableRandom;

import org.junit.jupiter.api.Test;

class HatchTest {

	@Test
	void noPointOfTheAreaIsFurtherFromALineThanHalfTheSpacing() {
		SplittableRandom random = new SplittableRandom(2);
		for (int round = 0; round < 300; round++) {
			double spacing = random.nextDouble(0.3, 3);
			Hatch hatch = new Hatch(Stroke.of(Ink.BLACK, 0.1), spacing, random.nextDouble(0, 180), false);
			Bounds area = new Bounds(random.nextDouble(-50, 50), random.nextDouble(-50, 50),
					random.nextDouble(0.1, 20), random.nextDouble(0.1, 20));
			double x = random.nextDouble(area.left(), area.right());
			double y = random.nextDouble(area.top(), area.bottom());
			List<Line> lines = hatch.over(area.grown(spacing));
			double nearest = lines.stream()
					.mapToDouble(line -> Line2D.ptSegDist(line.x1(), line.y1(), line.x2(), line.y2(), x, y)).min()
					.orElse(Double.POSITIVE_INFINITY);
			assertTrue(nearest <= spacing / 2 + 1e-9, "a bare spot " + nearest + " mm from a line");
		}
	}

	@Test
	void linesOfNeighbouringAreasMeet() {
		Hatch hatch = new Hatch(Stroke.of(Ink.BLACK, 0.1), 1, 0, false);
		List<Double> heights = hatch.over(new Bounds(3.3, 0.5, 2, 2)).stream().map(Line::y1).toList();
		for (double height : heights) {
			assertEquals(Math.rint(height), height, 1e-9);
		}
	}

	@Test
	void crossedLinesRunBothWays() {
		List<Line> lines = new Hatch(Stroke.of(Ink.BLACK, 0.1), 1, 0, true).over(new Bounds(0.4, 0.4, 0.9, 1.8));
		long level = lines.stream().filter(line -> Math.abs(line.y1() - line.y2()) < 1e-9).count();
		long upright = lines.stream().filter(line -> Math.abs(line.x1() - line.x2()) < 1e-9).count();
		assertEquals(2, level);
		assertEquals(2, upright);
		assertEquals(4, lines.size());
	}

	@Test
	void linesThatRunTogetherAreRefused() {
		assertThrows(IllegalArgumentException.class, () -> new Hatch(Stroke.of(Ink.BLACK, 1), 1, 0, false));
	}
}
