package padwright.drawing.scene;

/** Traces arcs about one centre as cubic curves of at most a quarter turn (off the circle by under 0.03 %). */
record ArcTracer(double centreX, double centreY) {

	double x(double radius, double angle) {
		return centreX + radius * StrictMath.sin(angle);
	}

	double y(double radius, double angle) {
		return centreY - radius * StrictMath.cos(angle);
	}

	/** From where the sink is, {@code sweep} radians clockwise (backwards if negative). */
	void trace(PathSink sink, double radius, double from, double sweep) {
		int parts = (int) Math.ceil(Math.abs(sweep) / (Math.PI / 2) - 1e-9);
		double step = sweep / parts;
		double handle = 4.0 / 3 * StrictMath.tan(step / 4) * radius;
		for (int part = 0; part < parts; part++) {
			double start = from + part * step;
			double end = start + step;
			sink.curveTo(x(radius, start) + handle * StrictMath.cos(start),
					y(radius, start) + handle * StrictMath.sin(start),
					x(radius, end) - handle * StrictMath.cos(end),
					y(radius, end) - handle * StrictMath.sin(end),
					x(radius, end), y(radius, end));
		}
	}
}
