package padwright.drawing.scene;

import java.util.List;

/**
 * One step of a {@link Path}.
 *
 * @param kind what it does
 * @param coordinates x and y of each point in turn, in mm: one point for a move or line, three for a curve
 */
public record Segment(Kind kind, List<Double> coordinates) {

	/** What a step does, and how many coordinates that takes. */
	public enum Kind {
		MOVE(2), LINE(2), CURVE(6), CLOSE(0);

		private final int coordinates;

		Kind(int coordinates) {
			this.coordinates = coordinates;
		}
	}

	/** @throws IllegalArgumentException if the number of coordinates is not the kind's */
	public Segment {
		coordinates = List.copyOf(coordinates);
		if (coordinates.size() != kind.coordinates) {
			throw new IllegalArgumentException(
					kind + " takes " + kind.coordinates + " coordinates, not " + coordinates.size());
		}
	}

	void trace(PathSink sink) {
		switch (kind) {
			case MOVE -> sink.moveTo(at(0), at(1));
			case LINE -> sink.lineTo(at(0), at(1));
			case CURVE -> sink.curveTo(at(0), at(1), at(2), at(3), at(4), at(5));
			case CLOSE -> sink.close();
		}
	}

	private double at(int index) {
		return coordinates.get(index);
	}
}
