package padwright.drawing.scene;

import java.util.Locale;

/**
 * A colour of ink.
 *
 * @param red 0 to 255
 * @param green 0 to 255
 * @param blue 0 to 255
 */
public record Ink(int red, int green, int blue) {

	public static final Ink BLACK = grey(0);
	public static final Ink WHITE = grey(255);

	/** @throws IllegalArgumentException if a component is not 0 to 255 */
	public Ink {
		for (int component : new int[] {red, green, blue}) {
			if (component < 0 || component > 255) {
				throw new IllegalArgumentException("a colour component of " + component + " is not 0 to 255");
			}
		}
	}

	/** A grey from 0 (black) to 255 (white). */
	public static Ink grey(int level) {
		return new Ink(level, level, level);
	}

	/** As in SVG: {@code #rrggbb}. */
	public String toHex() {
		return String.format(Locale.ROOT, "#%02x%02x%02x", red, green, blue);
	}
}
