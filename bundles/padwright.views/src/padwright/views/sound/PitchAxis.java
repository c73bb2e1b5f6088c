package padwright.views.sound;

import padwright.engine.pitch.EqualTemperament;
import padwright.engine.pitch.NoteName;
import padwright.model.systems.EffectiveSystem;

/**
 * From frequencies to notes as they are written for a system.
 *
 * @param standard of its A4 in Hz
 * @param transposition by how many semitones it sounds above what is written
 */
public record PitchAxis(double standard, double transposition) {

	static PitchAxis of(EffectiveSystem system) {
		return new PitchAxis(system.pitch().doubleValue(), system.transposition().doubleValue());
	}

	/** As a MIDI number with its fraction: 0.01 is a cent. */
	public double semitone(double hertz) {
		return EqualTemperament.midi(hertz * EqualTemperament.A4 / standard) - transposition;
	}

	/** The frequency of a written pitch. */
	public double hertz(double semitone) {
		return standard * StrictMath.pow(2, (semitone + transposition - EqualTemperament.midi(EqualTemperament.A4)) / 12);
	}

	/** The nearest note, as in {@code D5}. */
	String note(double hertz) {
		return NoteName.ofMidi(nearest(hertz)).toString();
	}

	/** How many cents a frequency lies above the nearest note. */
	double cents(double hertz) {
		return 100 * (semitone(hertz) - nearest(hertz));
	}

	private int nearest(double hertz) {
		return (int) Math.max(0, Math.min(127, Math.rint(semitone(hertz))));
	}
}
