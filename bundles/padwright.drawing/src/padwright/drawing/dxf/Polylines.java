package padwright.drawing.dxf;

import java.util.ArrayList;
import java.util.List;

import padwright.drawing.scene.PathSink;
import padwright.drawing.scene.Transform;

/** Outlines as straight pieces that leave curves by no more than {@link #OFF}. */
final class Polylines implements PathSink {

	/** How far a straight piece may be off its curve, mm. */
	static final double OFF = 0.005;
	private static final int MOST_PIECES = 200;

	/**
	 * A piece of outline.
	 *
	 * @param points x and y of each, mm
	 * @param isClosed whether the last point is joined with the first
	 */
	record Polyline(List<double[]> points, boolean isClosed) {
	}

	private final Transform map;
	private final List<Polyline> finished = new ArrayList<>();
	private List<double[]> points = new ArrayList<>();
	private double[] last = { 0, 0 };

	/** @param map from the coordinates of the outline to those of the points */
	Polylines(Transform map) {
		this.map = map;
	}

	List<Polyline> all() {
		finish(false);
		return finished;
	}

	@Override
	public void moveTo(double x, double y) {
		finish(false);
		add(x, y);
	}

	@Override
	public void lineTo(double x, double y) {
		add(x, y);
	}

	@Override
	public void curveTo(double x1, double y1, double x2, double y2, double x, double y) {
		double[] from = last;
		int pieces = pieces(from, x1, y1, x2, y2, x, y);
		for (int piece = 1; piece <= pieces; piece++) {
			double t = piece / (double) pieces;
			add(bezier(from[0], x1, x2, x, t), bezier(from[1], y1, y2, y, t));
		}
	}

	/**
	 * A curve in n equal pieces is off by at most 3/4 of its largest second difference of handles over n²
	 * (the chord's bound h²/8 · max |B''|, with |B''| at most 6 times that difference).
	 */
	private static int pieces(double[] from, double x1, double y1, double x2, double y2, double x, double y) {
		double first = Math.hypot(from[0] - 2 * x1 + x2, from[1] - 2 * y1 + y2);
		double second = Math.hypot(x1 - 2 * x2 + x, y1 - 2 * y2 + y);
		int wanted = (int) Math.ceil(Math.sqrt(0.75 * Math.max(first, second) / OFF));
		return Math.min(MOST_PIECES, Math.max(1, wanted));
	}

	private static double bezier(double a, double b, double c, double d, double t) {
		double u = 1 - t;
		return u * u * u * a + 3 * u * u * t * b + 3 * u * t * t * c + t * t * t * d;
	}

	@Override
	public void close() {
		finish(true);
	}

	private void add(double x, double y) {
		last = new double[] { x, y };
		points.add(new double[] { map.xOf(x, y), map.yOf(x, y) });
	}

	private void finish(boolean isClosed) {
		if (points.size() > 1) {
			finished.add(new Polyline(points, isClosed));
		}
		points = new ArrayList<>();
	}
}
