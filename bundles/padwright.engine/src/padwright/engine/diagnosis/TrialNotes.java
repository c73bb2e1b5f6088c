package padwright.engine.diagnosis;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * Notes that were tried on the instrument.
 *
 * @param bad those that did not speak as they should
 * @param good those that did; every pad they close is taken to seal
 */
public record TrialNotes(List<NoteFingering> bad, List<NoteFingering> good) {

	/** @throws IllegalArgumentException if a note stands twice, be it as bad and good */
	public TrialNotes {
		bad = List.copyOf(bad);
		good = List.copyOf(good);
		Set<String> seen = new HashSet<>();
		Stream.concat(bad.stream(), good.stream()).map(NoteFingering::note).forEach(note -> {
			if (!seen.add(note)) {
				throw new IllegalArgumentException("note " + note + " is reported twice");
			}
		});
	}

	/** Whether a note was tried already. */
	public boolean has(String note) {
		return Stream.concat(bad.stream(), good.stream()).anyMatch(tried -> tried.note().equals(note));
	}

	Set<String> clearedPads() {
		Set<String> cleared = new TreeSet<>();
		good.forEach(note -> cleared.addAll(note.closedPads()));
		return cleared;
	}

	/** The good notes that close a pad. */
	List<String> goodNotesClosing(String pad) {
		return good.stream().filter(note -> note.closedPads().contains(pad)).map(NoteFingering::note).toList();
	}
}
