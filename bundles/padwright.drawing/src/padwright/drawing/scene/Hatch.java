package padwright.drawing.scene;

import java.util.ArrayList;
import java.util.List;

/**
 * Parallel lines over a white ground: told apart by spacing and direction, so that it survives printing in black.
 *
 * @param lines how each line is drawn
 * @param spacing distance of the lines in mm, more than the width of a line
 * @param degrees direction clockwise from horizontal, 0 to 180
 * @param crossed also lines at right angles to the first
 */
public record Hatch(Stroke lines, double spacing, double degrees, boolean crossed) implements Fill {

	/** @throws IllegalArgumentException if the lines would run together */
	public Hatch {
		if (!(spacing > lines.width())) {
			throw new IllegalArgumentException(
					"hatch lines " + lines.width() + " mm wide run together at " + spacing + " mm");
		}
	}

	/** The lines that cover {@code area}, at fixed places of the plane, so that neighbours match. */
	public List<Line> over(Bounds area) {
		List<Line> all = new ArrayList<>(over(area, degrees));
		if (crossed) {
			all.addAll(over(area, degrees + 90));
		}
		return List.copyOf(all);
	}

	private List<Line> over(Bounds area, double direction) {
		double angle = StrictMath.toRadians(direction);
		double alongX = StrictMath.cos(angle);
		double alongY = StrictMath.sin(angle);
		double reach = StrictMath.hypot(area.width(), area.height()) / 2;
		double across = area.centreY() * alongX - area.centreX() * alongY;
		double along = area.centreX() * alongX + area.centreY() * alongY;
		List<Line> parallel = new ArrayList<>();
		long last = (long) Math.floor((across + reach) / spacing);
		for (long number = (long) Math.ceil((across - reach) / spacing); number <= last; number++) {
			double offset = number * spacing;
			double footX = along * alongX - offset * alongY;
			double footY = along * alongY + offset * alongX;
			parallel.add(new Line(footX - reach * alongX, footY - reach * alongY,
					footX + reach * alongX, footY + reach * alongY));
		}
		return parallel;
	}
}
