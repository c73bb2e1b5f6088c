package padwright.drawing.scene;

/** An upright rectangle of the plane in mm. */
public record Bounds(double left, double top, double width, double height) {

	public double right() {
		return left + width;
	}

	public double bottom() {
		return top + height;
	}

	public double centreX() {
		return left + width / 2;
	}

	public double centreY() {
		return top + height / 2;
	}

	/** This rectangle with {@code margin} more on each side. */
	public Bounds grown(double margin) {
		return new Bounds(left - margin, top - margin, width + 2 * margin, height + 2 * margin);
	}

	/** Whether the two share more than an edge. */
	public boolean overlaps(Bounds other) {
		return left < other.right() && other.left < right() && top < other.bottom() && other.top < bottom();
	}
}
