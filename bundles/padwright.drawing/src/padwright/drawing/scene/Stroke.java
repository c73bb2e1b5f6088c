package padwright.drawing.scene;

import java.util.List;

/**
 * How a line is drawn; ends are butt, joins are round.
 *
 * @param ink its colour
 * @param width in mm, more than 0
 * @param dash lengths of dashes and gaps in turn, in mm; empty for an unbroken line
 */
public record Stroke(Ink ink, double width, List<Double> dash) {

	/** @throws IllegalArgumentException if the width or a dash is not positive */
	public Stroke {
		dash = List.copyOf(dash);
		if (!(width > 0) || dash.stream().anyMatch(length -> !(length > 0))) {
			throw new IllegalArgumentException("a stroke of width " + width + " and dash " + dash + " cannot be drawn");
		}
	}

	/** An unbroken line. */
	public static Stroke of(Ink ink, double width) {
		return new Stroke(ink, width, List.of());
	}

	/** The dash as an array, empty for an unbroken line. */
	public float[] dashArray() {
		float[] array = new float[dash.size()];
		for (int i = 0; i < array.length; i++) {
			array[i] = dash.get(i).floatValue();
		}
		return array;
	}

	/** This line broken into dashes and gaps of these lengths in mm. */
	public Stroke dashed(double dashLength, double gapLength) {
		return new Stroke(ink, width, List.of(dashLength, gapLength));
	}
}
