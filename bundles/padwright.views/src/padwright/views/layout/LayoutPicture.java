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
 * @param least size of letters that can be read, mm of the drawing; 0 as on paper
 */
public record LayoutPicture(Layout layout, LayoutGeometry geometry, Set<String> selected, Optional<LayoutItem> anchor,
		Optional<String> figure, Set<String> moving, Optional<LayoutStretch> stretch, LayoutMotion motion,
		double least) {

	/** A layout while fingers press. */
	public static LayoutPicture of(Layout layout, LayoutMotion motion) {
		return new LayoutPicture(layout, LayoutGeometry.of(layout), Set.of(), Optional.empty(), Optional.empty(),
				Set.of(), Optional.empty(), motion, 0);
	}

	/** The same where letters can be read from a size on, mm of the drawing; no larger than there is room for at all. */
	public LayoutPicture lettered(double size) {
		return new LayoutPicture(layout, geometry, selected, anchor, figure, moving, stretch, motion,
				Math.min(size, geometry.mostLetters()));
	}

	/** A size of letters on paper as it is here. */
	double letters(double size) {
		return Math.max(size, least);
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
