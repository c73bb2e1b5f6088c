package padwright.views.layout;

import java.util.Optional;
import java.util.Set;

/**
 * All that a drawing of a layout shows.
 *
 * @param geometry of the layout as it was before anything was dragged, so that the ground stays where it is
 * @param selected ids
 * @param anchor what is taken hold of, where it would go
 * @param figure of its place, in words
 * @param moving ids of what is being dragged
 * @param stretch what the mouse draws out
 * @param lettering how many times as large as on paper letters are, where there is room; 1 or more
 */
public record LayoutPicture(Layout layout, LayoutGeometry geometry, Set<String> selected, Optional<LayoutItem> anchor,
		Optional<String> figure, Set<String> moving, Optional<LayoutStretch> stretch, LayoutMotion motion,
		double lettering) {

	/** A layout while fingers press. */
	public static LayoutPicture of(Layout layout, LayoutMotion motion) {
		return new LayoutPicture(layout, LayoutGeometry.of(layout), Set.of(), Optional.empty(), Optional.empty(),
				Set.of(), Optional.empty(), motion, 1);
	}

	/** The same with letters so many times as large as on paper. */
	public LayoutPicture lettered(double times) {
		return new LayoutPicture(layout, geometry, selected, anchor, figure, moving, stretch, motion, times);
	}

	/** A size of letters on paper as it is here, no more than so many times as large. */
	double letters(double size, double most) {
		return size * Math.min(lettering, most);
	}

	/** The x of a place along the tube, mm of the drawing. */
	public double x(double along) {
		return geometry.x(along);
	}

	/** The y of an angle in the unrolled view, mm of the drawing. */
	public double y(double around) {
		return geometry.y(around);
	}
}
