package padwright.engine.acoustics;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

import org.hipparchus.complex.Complex;

/**
 * How easily air flows in and out of an instrument over a range of frequencies, with the air outside its embouchure hole:
 * it is blown at the peaks.
 *
 * @param points by frequency, the peaks among them
 * @param resonances the peaks, by frequency
 */
public record ResonanceCurve(List<Point> points, List<Resonance> resonances) {

	/** Of the scan: far finer than a resonance of a flute is wide. */
	private static final double CENTS = 12.5;

	/**
	 * One point.
	 *
	 * @param decibels how much air flows for a pressure, over what the embouchure hole, or the upper end, would let flow in
	 *        an endless tube of its width; at a peak that of {@link Resonance}
	 */
	public record Point(double hertz, double decibels) {
	}

	public ResonanceCurve {
		points = List.copyOf(points);
		resonances = List.copyOf(resonances);
	}

	/**
	 * @param from in Hz, more than 0
	 * @param to in Hz, more than {@code from}
	 * @throws IllegalArgumentException if that is no range
	 */
	public static ResonanceCurve of(Instrument instrument, Fingering fingering, double from, double to) {
		if (!(from > 0 && to > from)) {
			throw new IllegalArgumentException("from " + from + " to " + to + " Hz is no range");
		}
		List<Part> covered = instrument.covered(fingering);
		int steps = (int) Math.ceil(1200 / CENTS * StrictMath.log(to / from) / StrictMath.log(2));
		double[] hertz = new double[steps + 1];
		Arrays.setAll(hertz, step -> from * StrictMath.pow(2, step * CENTS / 1200));
		Complex[] known = new Complex[hertz.length];
		Arrays.setAll(known, step -> instrument.column(hertz[step]).sounding(covered));
		ResonanceSearch search = instrument.search(covered);
		List<Resonance> resonances = new ArrayList<>();
		for (int step = 0; step < steps; step++) {
			if (ResonanceSearch.rises(known[step], known[step + 1])) {
				resonances.add(search.after(step, hertz, known));
			}
		}
		double characteristic = instrument.characteristicImpedance();
		Stream<Point> scanned = IntStream.range(0, hertz.length).mapToObj(
				step -> new Point(hertz[step], 20 * StrictMath.log10(characteristic / known[step].norm())));
		Stream<Point> peaks = resonances.stream().map(peak -> new Point(peak.hertz(), peak.decibels()));
		return new ResonanceCurve(Stream.concat(scanned, peaks).sorted(Comparator.comparingDouble(Point::hertz)).toList(),
				resonances);
	}

	/** The peak on which a note is played: the nearest to its pitch; nothing where there is none. */
	public Optional<Resonance> played(double target) {
		return resonances.stream()
				.min(Comparator.comparingDouble(resonance -> Math.abs(resonance.centsAbove(target))));
	}
}
