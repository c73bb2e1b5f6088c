package padwright.views.hole;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import padwright.engine.length.Length;
import padwright.model.keysystem.Titled;
import padwright.views.Figures;
import padwright.views.layout.Layout;
import padwright.views.layout.LayoutItem;

/**
 * The tube cut across through a hole. Nothing changes it later: after an edit it is made anew.
 *
 * @param layout that the hole is in
 * @param item the key, or the hole where no pad is over it
 * @param hole what has the sizes of the hole: the key itself, or the hole that it is over
 * @param sizes all that there are: a hole without a pad has no cup
 * @param undercut how much wider the hole is at the bore, in diameter
 * @param isFar whether the rod is on the side that the player does not see
 * @param rod on which the key turns, if one carries it
 */
public record HoleSection(Layout layout, LayoutItem item, Titled hole, Map<HoleSize, HoleMeasure> sizes, Length undercut,
		boolean isFar, Optional<String> rod) {

	public HoleSection {
		sizes = new EnumMap<>(sizes);
	}

	/** The items of a layout that have a hole and a place, from the upper end down. */
	public static List<LayoutItem> holes(Layout layout) {
		return HoleSectionReading.holes(layout);
	}

	/** The section through an item; nothing where it has no hole. */
	public static Optional<HoleSection> of(Layout layout, String id) {
		return layout.item(id).flatMap(item -> HoleSectionReading.of(layout, item));
	}

	/** With another size, as while it is being dragged. */
	HoleSection with(HoleSize size, Length length) {
		Map<HoleSize, HoleMeasure> changed = new EnumMap<>(sizes);
		changed.computeIfPresent(size, (same, measure) -> measure.as(length));
		return new HoleSection(layout, item, hole, changed, undercut, isFar, rod);
	}

	boolean hasCup() {
		return sizes.containsKey(HoleSize.CUP);
	}

	/** The size in mm; 0 where there is none. */
	double mm(HoleSize size) {
		return Optional.ofNullable(sizes.get(size)).map(measure -> Figures.mm(measure.length())).orElse(0.0);
	}

	/** 1 where the rod is drawn on the right, −1 on the left. */
	int hinge() {
		return isFar ? -1 : 1;
	}
}
