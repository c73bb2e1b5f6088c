package padwright.engine.diagnosis;

import java.util.Collections;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * Pads whose leaking together explains every bad note, none of them needlessly.
 *
 * @param pads their names, sorted
 * @param share its part of the probability of all sets that were found, 0 to 1
 */
public record SuspectSet(SortedSet<String> pads, double share) {

	public SuspectSet {
		pads = Collections.unmodifiableSortedSet(new TreeSet<>(pads));
	}

	/** Whether a note with this fingering would be bad if just these pads leak. */
	public boolean spoils(NoteFingering note) {
		return pads.stream().anyMatch(note.closedPads()::contains);
	}
}
