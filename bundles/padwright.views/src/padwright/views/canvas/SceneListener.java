package padwright.views.canvas;

import java.util.Optional;

import org.eclipse.swt.events.KeyEvent;

/** Told what is done to a drawing. Every answer has a default, so that only what matters is said. */
public interface SceneListener {

	/** A target was clicked, or Enter or the space bar was pressed on it; with Ctrl or Shift it is added. */
	default void touched(String id, boolean adding) {
	}

	/** A target was double-clicked, or Enter was pressed on it once more. */
	default void opened(String id) {
	}

	/** Esc, or a click beside everything. */
	default void cleared() {
	}

	/** The focus went to a target by keyboard. */
	default void focused(String id) {
	}

	/** First choice of every key but those that zoom; true if it was used. */
	default boolean typed(KeyEvent key) {
		return false;
	}

	/** Whether a target follows the mouse when it is dragged; if not, dragging moves the whole drawing. */
	default boolean canDrag(String id) {
		return false;
	}

	/** A target is being dragged and is over this point of the drawing, in mm. */
	default void dragged(String id, double x, double y) {
	}

	/** The target that was dragged was let go. */
	default void dropped(String id) {
	}

	/**
	 * The mouse begins to be dragged.
	 *
	 * @param id of what it went down on
	 * @param x of the point where it went down, mm of the drawing
	 * @param y of that point
	 * @param linking whether Ctrl is held
	 * @return whether the listener follows it from now on; if not, a target is dragged or the drawing moved
	 */
	default boolean grabbed(Optional<String> id, double x, double y, boolean linking) {
		return false;
	}

	/** What was grabbed is at this point of the drawing, in mm. */
	default void carried(double x, double y) {
	}

	/** What was grabbed was let go over a target, or over none. */
	default void released(Optional<String> over) {
	}

	/** A click at a point of the drawing, in mm, with Ctrl or Shift adding; true if it was used and is no touch. */
	default boolean clicked(double x, double y, boolean adding) {
		return false;
	}
}
