package padwright.views.clock;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;

/**
 * The way from one row to the next. What is typed before the text of the row that is left was read again, and before the
 * next row is shown, waits for it: no stroke is lost, and none lands in the row before.
 */
final class Typeahead {

	private final Deque<Runnable> strokes = new ArrayDeque<>();
	private Optional<String> to = Optional.empty();
	private String from = "";
	private boolean gone;

	/** From now on strokes wait for the row of a key. */
	void leaveFor(String key, String shown) {
		to = Optional.of(key);
		from = shown;
		gone = false;
	}

	/** Whether strokes wait. */
	boolean isUnderWay() {
		return to.isPresent();
	}

	/** Keeps a stroke. */
	void add(Runnable stroke) {
		strokes.add(stroke);
	}

	/** The key to be shown, told once; to be asked when the row before is written. */
	Optional<String> depart() {
		Optional<String> key = to.filter(wanted -> !gone);
		gone = to.isPresent();
		return key;
	}

	/** The row of a key is shown. The strokes meant for it follow; where it is not the one that was waited for they are dropped. */
	void arrive(String key) {
		if (to.isEmpty() || key.equals(from)) {
			return;
		}
		if (!to.get().equals(key)) {
			strokes.clear();
		}
		to = Optional.empty();
		while (to.isEmpty() && !strokes.isEmpty()) {
			strokes.poll().run();
		}
	}
}
