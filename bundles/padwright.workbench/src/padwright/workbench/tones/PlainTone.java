package padwright.workbench.tones;

/** A plain tone as it goes to a loudspeaker. */
public final class PlainTone {

	/** Samples a second. */
	static final float RATE = 44_100;
	/** Bytes of a sample, the lower one first. */
	static final int BYTES = 2;

	private static final double LOUDNESS = 0.3;
	/** At each end, so that it does not click. */
	private static final double EDGE_SECONDS = 0.013;

	private PlainTone() {
	}

	/**
	 * One tone that rises and falls.
	 *
	 * @param hertz 20 to 20 000
	 * @param milliseconds more than 0
	 */
	public static byte[] wave(double hertz, int milliseconds) {
		int samples = (int) (RATE * milliseconds / 1000);
		byte[] wave = new byte[samples * BYTES];
		for (int sample = 0; sample < samples; sample++) {
			double away = Math.min(sample, samples - 1 - sample) / (RATE * EDGE_SECONDS);
			short value = (short) (Short.MAX_VALUE * LOUDNESS * Math.min(1, away)
					* Math.sin(2 * Math.PI * hertz * sample / RATE));
			wave[sample * BYTES] = (byte) value;
			wave[sample * BYTES + 1] = (byte) (value >> Byte.SIZE);
		}
		return wave;
	}
}
