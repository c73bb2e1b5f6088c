package padwright.engine.acoustics;

import padwright.engine.pitch.EqualTemperament;

/**
 * A frequency at which a flute answers a jet of air: flow and pressure are in step, and the flow is greatest.
 *
 * @param hertz its frequency
 * @param decibels how much air flows for a pressure, over what the embouchure hole, or the upper end, would let flow in
 *        an endless tube of its width: above 0 by what the instrument helps
 * @param width in Hz between the frequencies above and below where the flow is down by 3 dB, as from a single resonance
 */
public record Resonance(double hertz, double decibels, double width) {

	/** Cents above a frequency in Hz. */
	public double centsAbove(double target) {
		return 100 * (EqualTemperament.midi(hertz) - EqualTemperament.midi(target));
	}

	/** Frequency over width. */
	public double quality() {
		return hertz / width;
	}
}
