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

	NoteSound sound(TargetNote note) {
		List<Part> covered = instrument.covered(note.fingering());
		int from = before(FROM * note.hertz());
		int to = Math.min(hertz.length, before(TO * note.hertz()) + 2);
		double[] scanned = Arrays.copyOfRange(hertz, from, to);
		Complex[] known = new Complex[scanned.length];
		Arrays.setAll(known, index -> column(from + index).sounding(covered));
		List<Integer> rises = IntStream.range(0, known.length - 1)
				.filter(index -> ResonanceSearch.rises(known[index], known[index + 1])).boxed().toList();
		ResonanceSearch search = instrument.search(covered);
		List<Resonance> resonances = new ArrayList<>();
		neighbours(rises, scanned, note.hertz()).forEach(index -> resonances.add(search.after(index, scanned, known)));
		return new NoteSound(note, resonances);
	}

	/** Two to each side of a frequency: the one nearest to it and that one's neighbours are among them. */
	private static List<Integer> neighbours(List<Integer> rises, double[] scanned, double target) {
		int above = (int) rises.stream().filter(index -> scanned[index] <= target).count();
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
}
