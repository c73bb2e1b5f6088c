package padwright.views.layout;

import java.util.Comparator;
import java.util.Optional;

import padwright.engine.length.Length;
import padwright.views.Figures;

/** Where things are in the side view of a layout, mm of its drawing. */
record SideGeometry(Layout layout, LayoutGeometry geometry) {

	/** Of a cup with its arm (invented). */
	private static final double CUP = 3;
	/** From the middle of the rod to the tube (a flute's, invented). */
	static final double ROD = 5;
	/** How near the mouse must be. */
	private static final double REACH = 1;

	/** How much something looks at the player: 1 at the near side, −1 at the far one. */
	static double faces(LayoutItem item) {
		return Math.sin(Math.toRadians(item.around().doubleValue()));
	}

	/** How far something reaches from the tube. */
	static double high(LayoutItem item) {
		return item.kind() == LayoutKind.ROD ? ROD : Figures.mm(item.chimney())
				+ (item.kind() == LayoutKind.KEY || item.kind() == LayoutKind.CUP ? CUP : 0);
	}

	/** The y so far above the bore where something lies. */
	double above(LayoutItem item, double height) {
		Length along = item.along().orElseThrow();
		double radius = layout.jointAt(along).widthAt(Figures.mm(along)) / 2 + height;
		return geometry.sideMiddle() - radius * Math.cos(Math.toRadians(item.around().doubleValue()));
	}

	/** What is drawn at a point: what looks at the player goes before what lies behind. */
	Optional<LayoutItem> at(double x, double y) {
		return layout.items().stream().filter(item -> item.along().isPresent() && isAt(item, x, y))
				.max(Comparator.comparingDouble(SideGeometry::faces)
						.thenComparing(item -> -Math.abs(geometry.x(item.along().orElseThrow()) - x)));
	}

	private boolean isAt(LayoutItem item, double x, double y) {
		double foot = above(item, 0);
		double head = above(item, high(item));
		double flat = Math.max(REACH, Math.abs(faces(item)) * item.radius());
		return geometry.isSide(y) && Math.abs(geometry.x(item.along().orElseThrow()) - x) <= item.radius()
				&& y >= Math.min(foot, head) - flat && y <= Math.max(foot, head) + flat;
	}
}
