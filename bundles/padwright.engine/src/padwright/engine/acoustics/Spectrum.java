package padwright.engine.acoustics;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

import org.hipparchus.complex.Complex;

/** An instrument at frequencies as far apart as a step of the scan, kept for all notes of a scale. Of one thread. */
final class Spectrum {

	/** Of the scan: resonances of a flute lie farther apart by far. */
	private static final double CENTS = 25;
	/** Where to look, as shares of a note's frequency: as far as the neighbours of the played resonance in every register. */
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
		int steps = (int) Math.ceil(1200 / CENTS * StrictMath.log(to / from) / StrictMath.log(2));
		hertz = new double[steps + 1];
		Arrays.setAll(hertz, step -> from * StrictMath.pow(2, step * CENTS / 1200));
		columns = new Column[hertz.length];
	}

	/** With all resonances about the note. */
	NoteSound sound(TargetNote note) {
		Scan scan = new Scan(note);
		List<Integer> rises = IntStream.range(0, scan.steps()).filter(scan::rises).boxed().toList();
		return new NoteSound(note, neighbours(rises, scan.above(note)).stream().map(scan::resonance).toList());
	}

	/** With the resonance alone on which the note is played: looked for from the note outwards, which is sooner done. */
	NoteSound played(TargetNote note) {
		Scan scan = new Scan(note);
		int middle = scan.above(note) - 1;
		int most = Math.max(middle, scan.steps() - 1 - middle);
		List<Resonance> found = new ArrayList<>();
		for (int away = 0; away <= most; away++) {
			boolean wasFound = !found.isEmpty();
			IntStream.of(middle - away, middle + away).distinct().filter(scan::rises)
					.forEach(index -> found.add(scan.resonance(index)));
			if (wasFound) {
				break;
			}
		}
		return new NoteSound(note, new NoteSound(note, found).played().stream().toList());
	}

	/** Two to each side of a frequency: the one nearest to it and that one's neighbours are among them. */
	private static List<Integer> neighbours(List<Integer> rises, int firstAbove) {
		int above = (int) rises.stream().filter(index -> index < firstAbove).count();
		int from = Math.max(0, above - 2);
		return rises.subList(from, Math.min(rises.size(), above + 2));
	}

	/** Of the last frequency that is not above this one. */
	private int before(double target) {
		int found = Arrays.binarySearch(hertz, target);
		return Math.max(0, found >= 0 ? found : -found - 2);
	}

	private Column column(int index) {
		if (columns[index] == null) {
			columns[index] = instrument.column(hertz[index]);
		}
		return columns[index];
	}

	/** The frequencies about one note, with the impedances that were asked for. */
	private final class Scan {

		private final List<Part> covered;
		private final int from;
		private final double[] scanned;
		private final Complex[] known;

		private Scan(TargetNote note) {
			covered = instrument.covered(note.fingering());
			from = before(FROM * note.hertz());
			scanned = Arrays.copyOfRange(hertz, from, Math.min(hertz.length, before(TO * note.hertz()) + 2));
			known = new Complex[scanned.length];
		}

		private int steps() {
			return scanned.length - 1;
		}

		/** Where the first frequency above a note is. */
		private int above(TargetNote note) {
			return before(note.hertz()) + 1 - from;
		}

		/** Whether there is a resonance in a step; in none beyond the ends. */
		private boolean rises(int index) {
			return index >= 0 && index < steps() && ResonanceSearch.rises(known(index), known(index + 1));
		}

		private Resonance resonance(int index) {
			IntStream.range(Math.max(0, index - 1), Math.min(scanned.length, index + 3)).forEach(this::known);
			return instrument.search(covered).after(index, scanned, known);
		}

		private Complex known(int index) {
			if (known[index] == null) {
				known[index] = column(from + index).sounding(covered);
			}
			return known[index];
		}
	}
}
