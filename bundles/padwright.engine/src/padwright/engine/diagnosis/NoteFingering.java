package padwright.engine.diagnosis;

import java.util.Collections;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * A note as it is fingered.
 *
 * @param note its name; two fingerings of one note need two names
 * @param closedPads the pads that must seal for it to speak, sorted by name
 */
public record NoteFingering(String note, SortedSet<String> closedPads) {

	public NoteFingering {
		closedPads = Collections.unmodifiableSortedSet(new TreeSet<>(closedPads));
	}

	/** A note with these closed pads, in any order. */
	public NoteFingering(String note, Set<String> closedPads) {
		this(note, new TreeSet<>(closedPads));
	}
}
