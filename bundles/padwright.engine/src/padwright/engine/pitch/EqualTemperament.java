package padwright.engine.pitch;

/** Equal temperament at A4 = 440 Hz (ISO 16): 440 · 2^((m − 69) / 12). */
public final class EqualTemperament {

	/** Frequency of A4 in Hz. */
	public static final double A4 = 440;

	private static final int A4_MIDI = 69;

	private EqualTemperament() {
	}

	/**
	 * The frequency of a MIDI number in Hz.
	 *
	 * @throws IllegalArgumentException if it is not 0 to 127
	 */
	public static double frequency(int midi) {
		return A4 * StrictMath.pow(2, (requireMidi(midi) - A4_MIDI) / 12.0);
	}

	/**
	 * The MIDI number of a frequency in Hz, with its fraction: 0.01 is a cent.
	 *
	 * @throws IllegalArgumentException if the frequency is not positive and finite
	 */
	public static double midi(double hertz) {
		if (!(hertz > 0 && hertz < Double.POSITIVE_INFINITY)) {
			throw new IllegalArgumentException(hertz + " Hz is not a frequency");
		}
		return A4_MIDI + 12 * StrictMath.log(hertz / A4) / StrictMath.log(2);
	}

	static int requireMidi(int midi) {
		if (midi < 0 || midi > 127) {
			throw new IllegalArgumentException("MIDI number " + midi + " is not 0 to 127");
		}
		return midi;
	}
}
