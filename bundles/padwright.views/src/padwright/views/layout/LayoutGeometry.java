package padwright.views.layout;

import java.util.LinkedHashSet;
import java.util.Set;
import java.util.stream.Collectors;

import padwright.drawing.scene.Bounds;
import padwright.engine.length.Length;
import padwright.views.Figures;

/**
 * Where the two views of a layout lie in its drawing, life-size in mm: the tube unrolled above, the side view below, things
 * without a place in a row under them. In the unrolled view the top of the tube is in the middle and the side that the
 * player sees is below.
 *
 * @param length of the tube
 * @param bore its greatest inside width, at which it is unrolled
 * @param unplaced whether anything has no place
 */
record LayoutGeometry(double length, double bore, boolean unplaced) {

	private static final double LEFT = 16;
	private static final double RIGHT = 10;
	private static final double TOP = 14;
	private static final double BETWEEN = 16;
	private static final double TRAY = 15;
	private static final double OUTSIDE = 12;
	/** What stands in the row of things without a place is so far apart. */
	static final double TRAY_STEP = 22;

	static LayoutGeometry of(Layout layout) {
		return new LayoutGeometry(Figures.mm(layout.length()), layout.widest(),
				layout.items().stream().anyMatch(item -> item.along().isEmpty()));
	}

	double width() {
		return LEFT + length + RIGHT;
	}

	double height() {
		return sideBottom() + (unplaced ? TRAY : 4);
	}

	double x(double along) {
		return LEFT + along;
	}

	double x(Length along) {
		return x(Figures.mm(along));
	}

	/** In the unrolled view. */
	double y(double around) {
		return middle() + Math.IEEEremainder(around, 360) * bore * Math.PI / 360;
	}

	double top() {
		return TOP;
	}

	double middle() {
		return TOP + bore * Math.PI / 2;
	}

	double bottom() {
		return TOP + bore * Math.PI;
	}

	double sideMiddle() {
		return bottom() + BETWEEN + OUTSIDE + bore / 2;
	}

	private double sideBottom() {
		return sideMiddle() + bore / 2 + OUTSIDE;
	}

	double trayMiddle() {
		return sideBottom() + TRAY / 2;
	}

	boolean isSide(double y) {
		return y >= sideMiddle() - bore / 2 - OUTSIDE && y <= sideBottom();
	}

	boolean isUnrolled(double y) {
		return y >= TOP - OUTSIDE / 2 && y <= bottom() + OUTSIDE / 2;
	}

	/** What has its middle in a rectangle of the unrolled view. */
	Set<String> inside(Layout layout, Bounds band) {
		return layout.items().stream().filter(item -> item.along().isPresent()).filter(item -> {
			double x = x(item.along().orElseThrow());
			double y = y(item.around().doubleValue());
			return x >= band.left() && x <= band.right() && y >= band.top() && y <= band.bottom();
		}).map(LayoutItem::id).collect(Collectors.toCollection(LinkedHashSet::new));
	}

	/** The place along the tube under a point, mm. */
	double along(double x) {
		return x - LEFT;
	}

	/** The angle under a point of the unrolled view, degrees from −180 to 180. */
	double around(double y) {
		return Math.max(-180, Math.min(180, (y - middle()) * 360 / (bore * Math.PI)));
	}
}
