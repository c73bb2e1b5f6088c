package padwright.workbench.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import padwright.engine.mechanism.Pressing;
import padwright.views.layout.Layout;

/** What is being dragged and pressed in the drawings of a window before any text says it. To be used in the UI thread. */
public final class Hands {

	/** Whoever wants to know. */
	public interface Listener {

		/** A layout is seen like this, also while something in it is being dragged. */
		void drawn(Layout shown);

		/**
		 * Touches are pressed.
		 *
		 * @param note that they were pressed by
		 */
		void pressed(Optional<String> note, Pressing touches);
	}

	private final List<Listener> listeners = new ArrayList<>();

	Hands() {
	}

	public void follow(Listener listener) {
		listeners.add(listener);
	}

	public void unfollow(Listener listener) {
		listeners.remove(listener);
	}

	/** Tells all how a layout is seen. */
	public void draw(Layout shown) {
		List.copyOf(listeners).forEach(listener -> listener.drawn(shown));
	}

	/** Tells all what is pressed. */
	public void press(Optional<String> note, Pressing touches) {
		List.copyOf(listeners).forEach(listener -> listener.pressed(note, touches));
	}
}
