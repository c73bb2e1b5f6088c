package padwright.engine.acoustics;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * How a note sounds, as far as the air column decides it.
 *
 * @param resonances about the note, by frequency: the nearest to it and its neighbours, as far as they lie within a
 *        good octave
 */
public record NoteSound(TargetNote note, List<Resonance> resonances) {

	public NoteSound {
		resonances = List.copyOf(resonances);
	}

	/** The resonance nearest to the note, on which it is played. */
	public Optional<Resonance> played() {
		return resonances.stream().min(Comparator.comparingDouble(
				resonance -> Math.abs(resonance.centsAbove(note.hertz()))));
	}

	/** The next resonance above the played one. */
	public Optional<Resonance> next() {
		return played().flatMap(played -> resonances.stream()
				.filter(resonance -> resonance.hertz() > played.hertz()).findFirst());
	}

	/** How many cents the played resonance lies above the note. */
	public Optional<Double> cents() {
		return played().map(played -> played.centsAbove(note.hertz()));
	}

	/** By how many dB the played resonance is stronger than the next one; below 0 if it is weaker. */
	public Optional<Double> strength() {
		return next().map(next -> played().orElseThrow().decibels() - next.decibels());
	}
}
