package padwright.engine.acoustics;

/**
 * Where to look for resonances.
 *
 * @param from lowest frequency over that of the note
 * @param to highest frequency over it
 */
record Range(double from, double to) {

	/** With the neighbours of the played resonance in every register. */
	static final Range NEIGHBOURS = new Range(0.45, 2.3);
	/** Only as far as something small may move a resonance. */
	static final Range NEAR = new Range(0.75, 1.5);
}
