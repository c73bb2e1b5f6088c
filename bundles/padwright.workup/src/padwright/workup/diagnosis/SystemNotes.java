package padwright.workup.diagnosis;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;

import padwright.engine.diagnosis.NoteFingering;
import padwright.engine.pitch.NoteName;
import padwright.workup.service.ServicePlan;
import padwright.workup.words.Listed;
import padwright.workup.words.NearestName;

/**
 * The notes of a plan's key system, found by any of their names. A note stands for its first fingering; a slash and a
 * label, or a number, choose another: {@code D4/side}, {@code D4/2}.
 */
public final class SystemNotes {

	private static final String CHOICE = "/";
	private static final int NEAR_NOTES = 3;

	private final Map<String, List<FingeredNote>> notes;

	public SystemNotes(ServicePlan plan) {
		notes = new Fingers(plan).notes();
	}

	/** Every fingering that can be pressed, in the order of the key system. */
	public List<NoteFingering> all() {
		return notes.values().stream().flatMap(Collection::stream).flatMap(note -> note.fingering().stream()).toList();
	}

	/**
	 * The fingering meant by {@code written}: a note as the system names it or as {@link NoteName#parse} reads it, at
	 * the same pitch however spelled, with a choice among its fingerings where it has several.
	 *
	 * @throws UnknownNoteException if there is none
	 */
	public NoteFingering find(String written) {
		String[] parts = written.strip().split(CHOICE, 2);
		List<FingeredNote> fingerings = note(parts[0].strip());
		FingeredNote chosen = parts.length == 1 ? fingerings.get(0)
				: fingerings.stream().filter(note -> note.isMeantBy(parts[1].strip())).findFirst()
						.orElseThrow(() -> new UnknownNoteException("note.noFingering", written,
								names(fingerings)));
		return chosen.fingering().orElseThrow(
				() -> new UnknownNoteException("note.notFingered", written, new Listed(chosen.obstacles(), "; ")));
	}

	private List<FingeredNote> note(String written) {
		if (notes.isEmpty()) {
			throw new UnknownNoteException("note.none");
		}
		OptionalInt pitch = pitch(written);
		return Optional.ofNullable(notes.get(written))
				.or(() -> notes.entrySet().stream()
						.filter(note -> pitch.isPresent() && pitch(note.getKey()).equals(pitch))
						.map(Map.Entry::getValue).findFirst())
				.orElseThrow(() -> new UnknownNoteException("note.unknown", written, near(written, pitch)));
	}

	/** The notes nearest in pitch; for what is no pitch those spelled most alike. */
	private String near(String written, OptionalInt pitch) {
		if (pitch.isEmpty()) {
			return spelledAlike(written);
		}
		return notes.keySet().stream().filter(note -> pitch(note).isPresent())
				.sorted(Comparator.comparingInt(note -> Math.abs(pitch(note).getAsInt() - pitch.getAsInt())))
				.limit(NEAR_NOTES).collect(Collectors.joining(", "));
	}

	private String spelledAlike(String written) {
		Set<String> left = new LinkedHashSet<>(notes.keySet());
		List<String> alike = new ArrayList<>();
		while (!left.isEmpty() && alike.size() < NEAR_NOTES) {
			alike.add(NearestName.among(left, written));
			left.removeAll(alike);
		}
		return String.join(", ", alike);
	}

	private static OptionalInt pitch(String note) {
		try {
			return OptionalInt.of(NoteName.parse(note).midi());
		} catch (IllegalArgumentException notANote) {
			return OptionalInt.empty();
		}
	}

	private static String names(List<FingeredNote> fingerings) {
		return fingerings.stream().map(FingeredNote::name).collect(Collectors.joining(", "));
	}
}
