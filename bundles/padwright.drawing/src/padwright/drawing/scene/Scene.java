package padwright.drawing.scene;

import java.util.List;

/**
 * A drawing or a page. The origin is the upper left corner.
 *
 * @param title what it shows, in one line
 * @param width mm, more than 0
 * @param height mm, more than 0
 * @param elements in drawing order
 */
public record Scene(String title, double width, double height, List<Element> elements) {

	/** @throws IllegalArgumentException if it has no area */
	public Scene {
		elements = List.copyOf(elements);
		if (!(width > 0 && height > 0)) {
			throw new IllegalArgumentException("a drawing cannot be " + width + " by " + height + " mm");
		}
	}
}
