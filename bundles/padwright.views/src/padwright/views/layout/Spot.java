package padwright.views.layout;

/** Where something lies in the unrolled view, or in the rows of things without a place. */
record Spot(double x, double y) {

	static Spot of(LayoutPicture picture, LayoutItem item) {
		LayoutGeometry geometry = picture.geometry();
		if (item.along().isPresent()) {
			return new Spot(geometry.x(item.along().get()), geometry.y(item.around().doubleValue()));
		}
		long before = picture.layout().items().stream().takeWhile(each -> !each.id().equals(item.id()))
				.filter(each -> each.along().isEmpty()).count();
		return geometry.tray((int) before);
	}
}
