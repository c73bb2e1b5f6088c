package padwright.views.map;

import java.util.List;

import padwright.drawing.font.DejaVuMetrics;
import padwright.drawing.layout.Lanes;
import padwright.drawing.scene.Face;

/**
 * A key at its place on the tube.
 *
 * @param along of its middle, mm
 * @param across of its middle, mm; below 0 on the far side
 */
record PlacedKey(MapKey key, double along, double across) {

	private static final double LARGEST = 6.6;
	/** Less is not read on a screen; such a label stands outside. */
	private static final double SMALLEST = 4;
	static final double OUTSIDE = 5.4;
	/** A narrower cup has no room for a label beside the mark of its state, mm. */
	private static final double SMALL_CUP = 12;

	double radius() {
		return key.cup() / 2;
	}

	double start() {
		return along - radius();
	}

	double end() {
		return along + radius();
	}

	/** The size at which the label fits into the cup. */
	double labelSize() {
		return Math.min(LARGEST, key.cup() * 0.76 / width(1));
	}

	boolean isLabelInside() {
		return labelSize() >= SMALLEST && key.cup() >= SMALL_CUP;
	}

	private double width(double size) {
		return new DejaVuMetrics().width(key.label(), Face.CONDENSED_BOLD, size);
	}

	/** In which row the labels outside the cups stand, from 0, so that none covers another. */
	static List<Integer> labelLanes(List<PlacedKey> keys, Axis axis) {
		return Lanes.of(keys.stream().map(key -> key.labelStretch(axis)).toList());
	}

	private Lanes.Stretch labelStretch(Axis axis) {
		double half = isLabelInside() ? 0 : axis == Axis.LYING ? width(OUTSIDE) / 2 + 0.5 : OUTSIDE / 2;
		return new Lanes.Stretch(along - half, along + half);
	}
}
