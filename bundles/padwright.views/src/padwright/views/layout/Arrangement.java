package padwright.views.layout;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

import padwright.engine.length.Length;

/** Ways to put several things in order at once. */
public enum Arrangement {

	/** At one place along the tube: that of the first. */
	ALIGN_ALONG,
	/** On one line along the tube: that of the first. */
	ALIGN_AROUND,
	/** Equally far from one to the next, between the two outermost. */
	DISTRIBUTE,
	/** To the other side of the tube. */
	MIRROR;

	/** A tenth of what is dragged in, so that equal distances stay equal to the eye and to the hand. */
	private static final long FINEST = 10_000;

	/** The same things at their new places; those without a place are left out. */
	List<LayoutItem> of(List<LayoutItem> chosen) {
		List<LayoutItem> placed = chosen.stream().filter(item -> item.along().isPresent()).toList();
		if (placed.isEmpty()) {
			return List.of();
		}
		LayoutItem first = placed.get(0);
		return switch (this) {
		case ALIGN_ALONG -> placed.stream().map(item -> item.at(first.along().orElseThrow(), item.around())).toList();
		case ALIGN_AROUND -> placed.stream().map(item -> item.at(item.along().orElseThrow(), first.around())).toList();
		case DISTRIBUTE -> distributed(placed);
		case MIRROR -> placed.stream().map(item -> item.at(item.along().orElseThrow(), mirrored(item.around()))).toList();
		};
	}

	private static BigDecimal mirrored(BigDecimal around) {
		return around.signum() == 0 || around.abs().compareTo(BigDecimal.valueOf(180)) == 0 ? around : around.negate();
	}

	private static List<LayoutItem> distributed(List<LayoutItem> placed) {
		List<LayoutItem> inOrder = new ArrayList<>(placed);
		inOrder.sort(Comparator.comparing(item -> item.along().orElseThrow()));
		long from = inOrder.get(0).along().orElseThrow().nanometres();
		long to = inOrder.get(inOrder.size() - 1).along().orElseThrow().nanometres();
		for (int index = 1; index < inOrder.size() - 1; index++) {
			long place = from + Math.round((to - from) * (double) index / (inOrder.size() - 1) / FINEST) * FINEST;
			inOrder.set(index, inOrder.get(index).at(Length.ofNanometres(place), inOrder.get(index).around()));
		}
		return inOrder;
	}
}
