package padwright.engine.acoustics;

import java.util.List;

import org.hipparchus.analysis.differentiation.Gradient;

/**
 * The sizes of a layout as numbers that know their derivatives by all its dimensions.
 *
 * @param dimensions in the order of the derivatives
 */
record Variables(List<Dimension> dimensions) {

	static Variables of(Layout layout) {
		return new Variables(List.copyOf(layout.dimensions().keySet()));
	}

	Gradient constant(double value) {
		return Gradient.constant(dimensions.size(), value);
	}

	Gradient ofBore(Layout layout, int point, Measure measure) {
		return variable(new Dimension(Dimension.Part.BORE, Integer.toString(point + 1), measure),
				layout.bore().get(point));
	}

	Gradient ofMouth(Mouth mouth, Measure measure) {
		return variable(new Dimension(Dimension.Part.MOUTH, "", measure), mouth);
	}

	Gradient ofHole(Hole hole, Measure measure) {
		return variable(new Dimension(Dimension.Part.HOLE, hole.name(), measure), hole);
	}

	private Gradient variable(Dimension dimension, Measured<?> measured) {
		return Gradient.variable(dimensions.size(), dimensions.indexOf(dimension), measured.size(dimension.measure()));
	}
}
