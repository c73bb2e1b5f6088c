package padwright.views.canvas;

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
}
