package padwright.drawing.scene;

/**
 * A picture of pixels, upright.
 *
 * @param data its pixels
 * @param bounds where it is, mm
 */
public record Picture(PictureData data, Bounds bounds) implements Element {

	/** A picture with its upper left corner at a place, as large as fits into a width and height, mm, with its own proportions. */
	public static Picture within(PictureData data, double left, double top, double width, double height) {
		double scale = Math.min(width / data.width(), height / data.height());
		return new Picture(data, new Bounds(left, top, data.width() * scale, data.height() * scale));
	}

	@Override
	public void accept(ElementVisitor visitor) {
		visitor.visit(this);
	}
}
