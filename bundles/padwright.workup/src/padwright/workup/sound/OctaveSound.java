package padwright.workup.sound;

import java.util.List;

/**
 * How even the usual notes of one octave are, in cents.
 *
 * @param octave 1 for the lowest
 * @param notes that have a resonance, one at least, the lowest first
 * @param mean of their cents
 * @param spread standard deviation of their cents about the mean: 0 for an even scale, wherever it lies
 * @param worst the note farthest from where it should be
 * @param step by how much two neighbours are farther from, or nearer to, each other than they should be, at most
 */
public record OctaveSound(int octave, List<ToneSound> notes, double mean, double spread, ToneSound worst,
		double step) {

	static OctaveSound of(int octave, List<ToneSound> notes) {
		double mean = notes.stream().mapToDouble(OctaveSound::cents).average().orElseThrow();
		double variance = notes.stream().mapToDouble(note -> square(cents(note) - mean)).average().orElseThrow();
		ToneSound worst = notes.get(0);
		double step = 0;
		for (int index = 1; index < notes.size(); index++) {
			ToneSound note = notes.get(index);
			worst = Math.abs(cents(note)) > Math.abs(cents(worst)) ? note : worst;
			step = Math.max(step, Math.abs(cents(note) - cents(notes.get(index - 1))));
		}
		return new OctaveSound(octave, notes, mean, Math.sqrt(variance), worst, step);
	}

	private static double square(double number) {
		return number * number;
	}

	private static double cents(ToneSound note) {
		return note.sound().cents().orElseThrow();
	}
}
