package padwright.paper.sheet;

import java.util.Map;
import java.util.Set;

/**
 * A fingering.
 *
 * @param name of the note, with what tells a further fingering apart
 * @param purpose what it is for; empty for the usual one
 * @param touches that are pressed
 * @param half those of them that are pressed only half
 * @param holes how each hole stands, by its name
 */
public record SheetNote(String name, String purpose, Set<String> touches, Set<String> half,
		Map<String, Opening> holes) {

	/** How far a hole is open. */
	public enum Opening {
		OPEN, HALF, CLOSED
	}

	public SheetNote {
		touches = Set.copyOf(touches);
		half = Set.copyOf(half);
		holes = Map.copyOf(holes);
	}
}
