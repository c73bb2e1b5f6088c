package padwright.drawing.scene;

import java.util.ArrayList;
import java.util.List;

/** Any outline of straight lines and cubic curves, in mm; several closed parts make holes. */
public record Path(List<Segment> segments) implements Geometry {

	/** @throws IllegalArgumentException if it does not begin with a move */
	public Path {
		segments = List.copyOf(segments);
		if (segments.isEmpty() || segments.get(0).kind() != Segment.Kind.MOVE) {
			throw new IllegalArgumentException("a path must begin by moving to its first point");
		}
	}

	/** The outlines of {@code parts} as one. */
	public static Path of(Geometry... parts) {
		Recorder recorder = new Recorder();
		for (Geometry part : parts) {
			part.trace(recorder);
		}
		return recorder.path();
	}

	@Override
	public void trace(PathSink sink) {
		segments.forEach(segment -> segment.trace(sink));
	}

	/** Records what is traced into it. */
	public static final class Recorder implements PathSink {

		private final List<Segment> segments = new ArrayList<>();

		@Override
		public void moveTo(double x, double y) {
			segments.add(new Segment(Segment.Kind.MOVE, List.of(x, y)));
		}

		@Override
		public void lineTo(double x, double y) {
			segments.add(new Segment(Segment.Kind.LINE, List.of(x, y)));
		}

		@Override
		public void curveTo(double x1, double y1, double x2, double y2, double x, double y) {
			segments.add(new Segment(Segment.Kind.CURVE, List.of(x1, y1, x2, y2, x, y)));
		}

		@Override
		public void close() {
			segments.add(new Segment(Segment.Kind.CLOSE, List.of()));
		}

		/** What was traced so far. */
		public Path path() {
			return new Path(segments);
		}
	}
}
