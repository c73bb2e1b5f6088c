package padwright.drawing.scene;

/** Which point of a text's baseline is at its place. */
public enum Anchor {
	START(0), MIDDLE(0.5), END(1);

	private final double fraction;

	Anchor(double fraction) {
		this.fraction = fraction;
	}

	/** How much of the text's width lies left of its place, 0 to 1. */
	public double fraction() {
		return fraction;
	}
}
