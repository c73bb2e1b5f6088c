package padwright.workup.harm;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What a pad does to the notes of the scale by leaking as it was felt.
 *
 * @param key its name
 * @param notes those that close it, the lowest first
 * @param mean loss of strength in dB that is to be expected, over all notes of the scale, those that do not close it too
 */
public record PadHarm(String key, List<NoteHarm> notes, double mean) {

	public PadHarm {
		notes = List.copyOf(notes);
	}

	/** The notes in which it is heard most, the worst first, as far as some loss is expected. */
	public List<NoteHarm> worst(int count) {
		return notes.stream().filter(note -> note.decibels().expected() > 0)
				.sorted(Comparator.comparingDouble((NoteHarm note) -> note.decibels().expected()).reversed()).limit(count)
				.toList();
	}

	/** What it does to one note; nothing where that does not close it. */
	public Optional<NoteHarm> in(String note) {
		return notes.stream().filter(harm -> harm.note().equals(note)).findFirst();
	}
}
