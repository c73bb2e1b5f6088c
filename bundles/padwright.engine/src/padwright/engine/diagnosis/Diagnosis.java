package padwright.engine.diagnosis;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * Which pads may leak, from notes that were tried. A bad note has a leak among the pads it closes, a good one has none;
 * the suspects are the minimal sets of pads that meet every bad note (Reiter, A theory of diagnosis from first
 * principles, 1987).
 *
 * @param notes the notes tried
 * @param suspects the sets, likeliest first: by the product of the pads' weights, scaled to a sum of one over all
 *     suspect pads, so that with even weights smaller sets come first; then by size, then by name
 * @param moreMayExist whether a limit of the search may have hidden sets: larger ones than the limit, or ones no likelier
 *     than the last one listed
 * @param contradictions bad notes that nothing explains; the suspects leave them aside
 */
public record Diagnosis(TrialNotes notes, List<SuspectSet> suspects, boolean moreMayExist,
		List<UnexplainedNote> contradictions) {

	public Diagnosis {
		suspects = List.copyOf(suspects);
		contradictions = List.copyOf(contradictions);
	}

	/**
	 * The diagnosis within {@link SearchLimits#USUAL}.
	 *
	 * @throws IllegalArgumentException if a note is reported as bad and as good, or more than 64 pads are suspect
	 */
	public static Diagnosis of(TrialNotes notes, PadWeights weights) {
		return of(notes, weights, SearchLimits.USUAL);
	}

	/**
	 * The diagnosis within these limits.
	 *
	 * @throws IllegalArgumentException if a note is reported as bad and as good, or more than 64 pads are suspect
	 */
	public static Diagnosis of(TrialNotes notes, PadWeights weights, SearchLimits limits) {
		notes.contested().ifPresent(note -> {
			throw new IllegalArgumentException("note " + note + " is reported twice, as bad and as good");
		});
		Set<String> cleared = notes.clearedPads();
		List<Set<String>> conflicts = new ArrayList<>();
		List<UnexplainedNote> contradictions = new ArrayList<>();
		for (NoteFingering bad : notes.bad()) {
			Set<String> conflict = new TreeSet<>(bad.closedPads());
			conflict.removeAll(cleared);
			if (conflict.isEmpty()) {
				contradictions.add(UnexplainedNote.of(bad, notes));
			} else {
				conflicts.add(conflict);
			}
		}
		if (conflicts.isEmpty()) {
			return new Diagnosis(notes, List.of(), false, contradictions);
		}
		SuspectFinder finder = new SuspectFinder(conflicts, weights);
		HittingSetSearch.Result result = finder.search(limits);
		return new Diagnosis(notes, finder.named(result.sets()), result.moreMayExist(), contradictions);
	}

	/**
	 * The untried note that is expected to tell most between the suspects listed; the first of equals, none if no note
	 * can.
	 */
	public Optional<NextNote> nextNote(List<NoteFingering> candidates) {
		return NextNote.among(candidates.stream().filter(note -> !notes.has(note.note())).toList(), suspects,
				(set, note) -> set.spoils(note) ? 1 : 0);
	}
}
