package padwright.paper.sheet;

import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A fingering.
 *
 * @param name of the note, with what tells a further fingering apart
 * @param touches that are pressed
 * @param keys pressed besides, by label
 * @param closed names of the pads that are closed; empty if it cannot be told
 */
public record SheetNote(String name, Set<String> touches, List<String> keys, Optional<Set<String>> closed) {

	public SheetNote {
		touches = Set.copyOf(touches);
		keys = List.copyOf(keys);
		closed = closed.map(Set::copyOf);
	}
}
