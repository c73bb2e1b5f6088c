package padwright.engine.diagnosis;

import java.util.Collections;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * A bad note that no pad can explain, because good notes clear all the pads it closes: one of the reports is wrong, or
 * the fault is no leaking pad.
 *
 * @param note the bad note
 * @param clearedBy for each pad it closes the good notes that clear it
 */
public record UnexplainedNote(String note, SortedMap<String, List<String>> clearedBy) {

	public UnexplainedNote {
		clearedBy = Collections.unmodifiableSortedMap(new TreeMap<>(clearedBy));
	}

	static UnexplainedNote of(NoteFingering bad, TrialNotes notes) {
		SortedMap<String, List<String>> clearedBy = new TreeMap<>();
		bad.closedPads().forEach(pad -> clearedBy.put(pad, notes.goodNotesClosing(pad)));
		return new UnexplainedNote(bad.note(), clearedBy);
	}
}
