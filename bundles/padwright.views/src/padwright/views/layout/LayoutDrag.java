package padwright.views.layout;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;

import padwright.engine.length.Length;
import padwright.views.layout.Snap.Place;

/**
 * Things that are being dragged, from where they were. The one that was taken hold of goes to where it is meant to be;
 * the others keep their distance from it.
 *
 * @param anchor that was taken hold of
 * @param all that are dragged, the anchor among them
 * @param x where it was taken hold of, mm of the drawing
 * @param y where it was taken hold of
 */
record LayoutDrag(Layout layout, LayoutGeometry geometry, LayoutItem anchor, List<LayoutItem> all, double x, double y) {

	/** A tenth of a millimetre. */
	private static final long STEP = 100_000;
	private static final int DEGREES = 1000;
	private static final double NANOMETRES = 1e6;

	/** Things on their way, and what the place of the anchor was chosen for. */
	record Way(List<LayoutItem> items, LayoutItem anchor, Snap.Reason along, Snap.Reason around) {
	}

	/**
	 * Where everything is when the mouse is at a point.
	 *
	 * @param reach how near a place must be to be meant, mm; 0 for steps alone
	 */
	Way to(double toX, double toY, double reach) {
		boolean isUnrolled = geometry.isUnrolled(y) || anchor.along().isEmpty();
		double along = anchor.along().isPresent() ? anchor.along().get().nanometres() / NANOMETRES + toX - x
				: geometry.along(toX);
		double around = !isUnrolled ? anchor.around().doubleValue()
				: anchor.along().isEmpty() ? geometry.around(toY)
						: anchor.around().doubleValue() + geometry.around(toY) - geometry.around(y);
		Place place = new Snap(STEP, Math.round(reach * NANOMETRES)).among(places(), Math.round(along * NANOMETRES));
		double degreesReach = reach * 360 / (geometry.bore() * Math.PI);
		Place angle = new Snap(DEGREES, Math.round(degreesReach * DEGREES)).among(angles(),
				Math.round(Math.IEEEremainder(around, 360) * DEGREES));
		return moved(place, angle);
	}

	private Way moved(Place place, Place angle) {
		long length = layout.length().nanometres();
		LayoutItem there = anchor.at(Length.ofNanometres(Math.max(0, Math.min(length, place.at()))), degrees(angle.at()));
		Length by = there.along().orElseThrow().minus(anchor.along().orElse(Length.ZERO));
		BigDecimal turn = there.around().subtract(anchor.around());
		List<LayoutItem> items = all.stream()
				.filter(item -> item.along().isPresent() && anchor.along().isPresent() || item == anchor)
				.map(item -> item == anchor ? there : item.at(item.along().orElseThrow().plus(by),
						turned(item.around(), turn))).toList();
		return new Way(items, there, place.reason(), angle.reason());
	}

	private static BigDecimal turned(BigDecimal around, BigDecimal by) {
		BigDecimal turned = around.add(by);
		BigDecimal whole = BigDecimal.valueOf(360);
		return turned.compareTo(BigDecimal.valueOf(180)) > 0 ? turned.subtract(whole)
				: turned.compareTo(BigDecimal.valueOf(-180)) < 0 ? turned.add(whole) : turned;
	}

	private static BigDecimal degrees(long thousandths) {
		return BigDecimal.valueOf(thousandths, 3).setScale(1, RoundingMode.HALF_EVEN).stripTrailingZeros();
	}

	/** Of the others, and where the anchor was. */
	private List<Long> places() {
		return layout.items().stream().filter(this::isOther).flatMap(item -> item.along().stream())
				.map(Length::nanometres).toList();
	}

	private List<Long> angles() {
		return layout.items().stream().filter(item -> item.along().isPresent())
				.filter(item -> isOther(item) || item.id().equals(anchor.id()))
				.map(item -> Math.round(Math.IEEEremainder(item.around().doubleValue(), 360) * DEGREES)).toList();
	}

	/** Rods hold no key in its place, and a cup goes with its hole. */
	private boolean isOther(LayoutItem item) {
		return item.kind() != LayoutKind.ROD && all.stream().noneMatch(each -> each.placed() == item.placed());
	}
}
