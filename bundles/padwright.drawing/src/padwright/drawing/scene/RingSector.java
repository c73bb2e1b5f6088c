package padwright.drawing.scene;

/**
 * The part of a ring between two directions. Angles in radians, clockwise from straight up, as on a clock.
 *
 * @param x centre, mm
 * @param y centre, mm
 * @param inner inside radius, mm, more than 0
 * @param outer outside radius, mm, more than {@code inner}
 * @param from where it begins
 * @param sweep how far it goes clockwise, more than 0, less than a whole turn
 */
public record RingSector(double x, double y, double inner, double outer, double from, double sweep)
		implements Geometry {

	/** @throws IllegalArgumentException if it is not a part of a ring */
	public RingSector {
		if (!(inner > 0 && outer > inner && sweep > 0 && sweep < 2 * Math.PI)) {
			throw new IllegalArgumentException(
					"radii " + inner + " to " + outer + " mm over " + sweep + " rad are not a part of a ring");
		}
	}

	@Override
	public void trace(PathSink sink) {
		ArcTracer arc = new ArcTracer(x, y);
		sink.moveTo(arc.x(outer, from), arc.y(outer, from));
		arc.trace(sink, outer, from, sweep);
		sink.lineTo(arc.x(inner, from + sweep), arc.y(inner, from + sweep));
		arc.trace(sink, inner, from + sweep, -sweep);
		sink.close();
	}
}
