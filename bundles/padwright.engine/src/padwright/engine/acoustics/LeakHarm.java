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

	/**
	 * Each leak by itself in each note that closes its hole, by one of Newton's steps from the resonance without it.
	 * Within a tenth of a cent and of a dB up to 2 thou all around; at 4 thou, where a pad is nearly open, within 8 cents.
	 *
	 * @param leaks by the names of the holes, those that each pad may have
	 * @return note by note, and within each in the order of the holes and their leaks; nothing for a note without a resonance
	 */
	public static List<LeakHarm> of(Instrument instrument, List<TargetNote> notes, Map<String, List<Cover.Leaking>> leaks) {
		List<LeakHarm> harms = new ArrayList<>();
		for (NoteSound sound : instrument.played(notes)) {
			sound.played().ifPresent(tight -> {
				Resonating column = new Resonating(instrument, sound.note(), tight);
				instrument.layout().holes().stream().map(Hole::name)
						.filter(hole -> leaks.containsKey(hole) && isClosed(hole, sound.note()))
						.forEach(hole -> leaks.get(hole).forEach(leak -> harms.add(harm(column, hole, leak))));
			});
		}
		return harms;
	}

	private static LeakHarm harm(Resonating column, String hole, Cover leak) {
		return column.step(hole, leak).map(shift -> new LeakHarm(hole, column.note(), shift.cents(), -shift.decibels()))
				.orElseGet(() -> new LeakHarm(hole, column.note(), 0, Double.POSITIVE_INFINITY));
	}

	private static boolean isClosed(String hole, TargetNote note) {
		return note.fingering().over(hole) instanceof Cover.Shut;
	}

	/** The strength that is left, as pressure with the leak over pressure without it: 0 to 1. */
	public double left() {
		return StrictMath.pow(10, -decibels / 20);
	}
}
