package padwright.engine.pitch;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A note in scientific pitch notation, in which C4 is middle C and the octave turns at C.
 *
 * @param letter A to G
 * @param accidental -1 flat, 0 natural, 1 sharp
 * @param octave -1 to 9
 */
public record NoteName(char letter, int accidental, int octave) {

	private static final Pattern WRITTEN = Pattern.compile("([A-G])([#♯sb♭]?)(-1|[0-9])");
	private static final String LETTERS = "CDEFGAB";
	private static final int[] SEMITONES = { 0, 2, 4, 5, 7, 9, 11 };
	private static final String SHARP_SPELLING = "CCDDEFFGGAAB";

	/** @throws IllegalArgumentException if a part is out of range, or the note lies outside MIDI 0 to 127 */
	public NoteName {
		if (LETTERS.indexOf(letter) < 0 || Math.abs(accidental) > 1 || octave < -1 || octave > 9) {
			throw new IllegalArgumentException("no note " + letter + " with accidental " + accidental + " in octave "
					+ octave + ": A to G, flat to sharp, octave -1 to 9");
		}
		EqualTemperament.requireMidi(midi(letter, accidental, octave));
	}

	/**
	 * Reads {@code D4}, {@code C♯5}, {@code C#5}, {@code Cs5}, {@code B♭3} or {@code Bb3}.
	 *
	 * @throws IllegalArgumentException if it is written otherwise
	 */
	public static NoteName parse(String text) {
		Matcher matcher = WRITTEN.matcher(text);
		if (!matcher.matches()) {
			throw new IllegalArgumentException("\"" + text + "\" is not a note such as D4, C♯5 (Cs5) or B♭3 (Bb3)");
		}
		int accidental = switch (matcher.group(2)) {
			case "" -> 0;
			case "b", "♭" -> -1;
			default -> 1;
		};
		return new NoteName(matcher.group(1).charAt(0), accidental, Integer.parseInt(matcher.group(3)));
	}

	/**
	 * The note of a MIDI number, spelled with a sharp where it needs an accidental.
	 *
	 * @throws IllegalArgumentException if it is not 0 to 127
	 */
	public static NoteName ofMidi(int midi) {
		int step = EqualTemperament.requireMidi(midi) % 12;
		char letter = SHARP_SPELLING.charAt(step);
		return new NoteName(letter, step - SEMITONES[LETTERS.indexOf(letter)], midi / 12 - 1);
	}

	/**
	 * The note nearest to a frequency in Hz; the lower one half way between two.
	 *
	 * @throws IllegalArgumentException if it is not positive or more than half a step outside MIDI 0 to 127
	 */
	public static NoteName nearest(double hertz) {
		return ofMidi((int) Math.ceil(EqualTemperament.midi(hertz) - 0.5));
	}

	/** MIDI number, 0 to 127; C4 is 60, A4 is 69. B♯3 is 60 too, and C♭4 is 59. */
	public int midi() {
		return midi(letter, accidental, octave);
	}

	/** Frequency in Hz in equal temperament at A4 = 440 Hz. */
	public double frequency() {
		return EqualTemperament.frequency(midi());
	}

	private static int midi(char letter, int accidental, int octave) {
		return (octave + 1) * 12 + SEMITONES[LETTERS.indexOf(letter)] + accidental;
	}

	/** As in {@code C♯5}. */
	@Override
	public String toString() {
		return letter + (accidental == 0 ? "" : accidental > 0 ? "♯" : "♭") + octave;
	}
}
