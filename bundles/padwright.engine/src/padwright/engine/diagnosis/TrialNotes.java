package padwright.engine.diagnosis;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Notes that were tried on the instrument. One that was played again stands again, as it was judged then: so it may be bad
 * and good.
 *
 * @param bad those that did not speak as they should
 * @param good those that did; every pad they close is taken to seal
 */
public record TrialNotes(List<NoteFingering> bad, List<NoteFingering> good) {

	public TrialNotes {
		bad = List.copyOf(bad);
		good = List.copyOf(good);
	}

	/** Whether a note was tried already. */
	public boolean has(String note) {
		return Stream.concat(bad.stream(), good.stream()).anyMatch(tried -> tried.note().equals(note));
	}

	/** The first note that was judged both ways. */
	Optional<String> contested() {
		Set<String> speaking = good.stream().map(NoteFingering::note).collect(Collectors.toSet());
		return bad.stream().map(NoteFingering::note).filter(speaking::contains).findFirst();
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
