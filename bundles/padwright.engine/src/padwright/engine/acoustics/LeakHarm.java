package padwright.engine.acoustics;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * What one leaking pad does to one note.
 *
 * @param hole under the pad
 * @param note with the pad tight
 * @param cents by which the leak moves the resonance that the note is played on; above 0 is sharper
 * @param decibels by which it weakens that resonance; infinite if there is none left
 */
public record LeakHarm(String hole, TargetNote note, double cents, double decibels) {

	/** A leak in one note, and its resonance without it. */
	private record Trial(String hole, TargetNote note, Resonance tight, TargetNote leaking) {
	}

	/**
	 * Each leak by itself in each note that closes its hole; the resonance is followed from where it is without the
	 * leak.
	 *
	 * @param leaks by the names of the holes
	 * @return note by note, and within each in the order of the holes; nothing for a note without a resonance
	 */
	public static List<LeakHarm> of(Instrument instrument, List<TargetNote> notes, Map<String, Cover.Leaking> leaks) {
		List<Trial> trials = new ArrayList<>();
		for (NoteSound sound : instrument.sound(notes)) {
			sound.played().ifPresent(tight -> instrument.layout().holes().stream().map(Hole::name)
					.filter(hole -> leaks.containsKey(hole) && isClosed(hole, sound.note()))
					.forEach(hole -> trials.add(trial(hole, sound.note(), tight, leaks.get(hole)))));
		}
		List<NoteSound> leaking = instrument.sound(trials.stream().map(Trial::leaking).toList(), Range.NEAR);
		List<LeakHarm> harms = new ArrayList<>();
		for (int index = 0; index < leaking.size(); index++) {
			harms.add(harm(trials.get(index), leaking.get(index)));
		}
		return harms;
	}

	private static boolean isClosed(String hole, TargetNote note) {
		return note.fingering().over(hole) instanceof Cover.Shut;
	}

	private static Trial trial(String hole, TargetNote note, Resonance tight, Cover.Leaking leak) {
		return new Trial(hole, note, tight,
				new TargetNote(note.label(), tight.hertz(), note.fingering().with(hole, leak)));
	}

	private static LeakHarm harm(Trial trial, NoteSound leaking) {
		Resonance tight = trial.tight();
		return leaking.played()
				.map(left -> new LeakHarm(trial.hole(), trial.note(), left.centsAbove(tight.hertz()),
						tight.decibels() - left.decibels()))
				.orElseGet(() -> new LeakHarm(trial.hole(), trial.note(), 0, Double.POSITIVE_INFINITY));
	}
}
