package padwright.engine.acoustics;

import java.util.Arrays;
import java.util.List;

import org.hipparchus.complex.Complex;

/** An instrument at frequencies as far apart as a step of the scan, kept for all notes of a scale. Of one thread. */
final class Spectrum {

	/** Of the scan: resonances of a flute lie farther apart by far. */
	private static final double CENTS = 20;
	/** A note is looked for from here to there, times its frequency: with the next resonance in every register. */
	private static final double FROM = 0.45;
	private static final double TO = 2.3;

	private final Instrument instrument;
	private final double[] hertz;
	private final Column[] columns;

	/** @param notes one at least */
	Spectrum(Instrument instrument, List<TargetNote> notes) {
		this.instrument = instrument;
		double from = FROM * notes.stream().mapToDouble(TargetNote::hertz).min().orElseThrow();
		double to = TO * notes.stream().mapToDouble(TargetNote::hertz).max().orElseThrow();
		int steps = (int) Math.ceil(1200 / CENTS * Math.log(to / from) / Math.log(2));
		hertz = new double[steps + 1];
		Arrays.setAll(hertz, step -> from * StrictMath.pow(2, step * CENTS / 1200));
		columns = new Column[hertz.length];
	}

	NoteSound sound(TargetNote note) {
		int from = insertion(FROM * note.hertz());
		int to = Math.min(hertz.length, insertion(TO * note.hertz()) + 1);
		Complex[] known = new Complex[to - from];
		for (int index = from; index < to; index++) {
			known[index - from] = column(index).impedance(note.fingering());
		}
		return new NoteSound(note, instrument.search(note.fingering()).between(Arrays.copyOfRange(hertz, from, to),
				known));
	}

	/** Of the last frequency that is not above this one. */
	private int insertion(double target) {
		int found = Arrays.binarySearch(hertz, target);
		return Math.max(0, found >= 0 ? found : -found - 2);
	}

	private Column column(int index) {
		if (columns[index] == null) {
			columns[index] = instrument.column(hertz[index]);
		}
		return columns[index];
	}
}
