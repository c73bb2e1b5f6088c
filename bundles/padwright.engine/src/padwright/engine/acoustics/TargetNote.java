package padwright.engine.acoustics;

/**
 * A note and how it is fingered.
 *
 * @param label what it is called
 * @param hertz where it should be, 20 to 20 000 Hz
 */
public record TargetNote(String label, double hertz, Fingering fingering) {

	/** @throws IllegalArgumentException if the frequency is out of range */
	public TargetNote {
		Sizes.requireBetween("frequency of " + label, hertz, 20, 20_000);
	}
}
