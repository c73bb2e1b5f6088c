package padwright.views.layout;

import java.util.LinkedHashSet;
import java.util.Set;
import java.util.stream.Collectors;

import padwright.drawing.scene.Bounds;
import padwright.engine.length.Length;
import padwright.views.Figures;

/**
 * Where the two views of a layout lie in its drawing, life-size in mm: the tube unrolled above, the side view below, things
 * without a place in rows under them. In the unrolled view the top of the tube is in the middle and the side that the
 * player sees is below.
 *
 * @param length of the tube
 * @param bore its greatest inside width, at which it is unrolled
 * @param unplaced how many things have no place
 */
record LayoutGeometry(double length, double bore, int unplaced) {

	private static final double LEFT = 16;
	private static final double RIGHT = 10;
	private static final double TOP = 17;
	private static final double BETWEEN = 16;
	private static final double TRAY = 11;
	private static final double OUTSIDE = 12;
	/** What stands in the rows of things without a place is so far apart. */
	private static final double TRAY_STEP = 22;
	/** A tube of this length has as much room around it as this says; a longer one is shown smaller, and has more. */
	private static final double ROOMY = 220;
	private static final double MOST_ROOM = 4;
	private static final double LETTERS = 6.5;

	static LayoutGeometry of(Layout layout) {
		return new LayoutGeometry(Figures.mm(layout.length()), layout.widest(),
				(int) layout.items().stream().filter(item -> item.along().isEmpty()).count());
	}

	private double room() {
		return Math.max(1, Math.min(MOST_ROOM, length / ROOMY));
	}

	/** The largest letters that there is room for around the tube, mm. */
	double mostLetters() {
		return LETTERS * room();
	}

	private double left() {
		return LEFT * room();
	}

	double width() {
		return left() + length + RIGHT * room();
	}

	double height() {
		return sideBottom() + (unplaced > 0 ? TRAY * room() * (rows() + 0.5) : 4);
	}

	/** In one row of things without a place. */
	private int columns() {
		return Math.max(1, (int) ((length + RIGHT * room()) / (TRAY_STEP * room())));
	}

	private int rows() {
		return (unplaced + columns() - 1) / columns();
	}

	/** Where something without a place stands that so many others come before. */
	Spot tray(int before) {
		return new Spot(x(TRAY_STEP * room() * (before % columns() + 0.5)),
				trayTop() + TRAY * room() * (before / columns() + 0.5));
	}

	double trayTop() {
		return sideBottom() + TRAY * room() * 0.3;
	}

	double x(double along) {
		return left() + along;
	}

	double x(Length along) {
		return x(Figures.mm(along));
	}

	/** In the unrolled view. */
	double y(double around) {
		return middle() + Math.IEEEremainder(around, 360) * bore * Math.PI / 360;
	}

	double top() {
		return TOP * room();
	}

	double middle() {
		return top() + bore * Math.PI / 2;
	}

	double bottom() {
		return top() + bore * Math.PI;
	}

	double sideMiddle() {
		return bottom() + BETWEEN * room() + OUTSIDE + bore / 2;
	}

	private double sideBottom() {
		return sideMiddle() + bore / 2 + OUTSIDE;
	}

	boolean isSide(double y) {
		return y >= sideMiddle() - bore / 2 - OUTSIDE && y <= sideBottom();
	}

	boolean isUnrolled(double y) {
		return y >= top() - OUTSIDE / 2 && y <= bottom() + OUTSIDE / 2;
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
		return x - left();
	}

	/** The angle under a point of the unrolled view, degrees from −180 to 180. */
	double around(double y) {
		return Math.max(-180, Math.min(180, (y - middle()) * 360 / (bore * Math.PI)));
	}
}
