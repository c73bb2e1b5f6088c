package padwright.views;

import padwright.drawing.scene.Ink;

/** How well one colour is told from another: W3C, Web Content Accessibility Guidelines 2.1, 1.4.3. */
public final class Contrast {

	/** What text needs at least. */
	public static final double OF_TEXT = 4.5;

	private Contrast() {
	}

	/** From 1 for the same colour to 21 for black on white. */
	public static double between(Ink one, Ink other) {
		double lighter = Math.max(luminance(one), luminance(other));
		double darker = Math.min(luminance(one), luminance(other));
		return (lighter + 0.05) / (darker + 0.05);
	}

	private static double luminance(Ink ink) {
		return 0.2126 * linear(ink.red()) + 0.7152 * linear(ink.green()) + 0.0722 * linear(ink.blue());
	}

	private static double linear(int component) {
		double share = component / 255.0;
		return share <= 0.03928 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
	}
}
