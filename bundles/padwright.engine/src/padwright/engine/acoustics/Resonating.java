package padwright.engine.acoustics;

import java.util.List;
import java.util.Optional;

import org.hipparchus.complex.Complex;

/** An instrument about one resonance of a note, to be asked what it does with a hole covered otherwise. Of one thread. */
final class Resonating {

	/** Share of the frequency over which slopes are taken. */
	private static final double NEAR = 1e-5;
	/** Behind a step smaller than this share nothing is left, since steps get smaller by their square. */
	private static final double SMALL = 1e-5;
	private static final int MOST_STEPS = 12;

	/**
	 * From one resonance to another.
	 *
	 * @param cents by which it is sharper
	 * @param decibels by which it is stronger
	 */
	record Shift(double cents, double decibels) {
	}

	/** An instrument at one frequency and a little above it. */
	private record Near(double hertz, Column at, Column above) {

		static Near of(Instrument instrument, double hertz) {
			return new Near(hertz, instrument.column(hertz), instrument.column(hertz * (1 + NEAR)));
		}
	}

	private final Instrument instrument;
	private final TargetNote note;
	private final Near near;
	private final double resistance;

	/** @param played resonance of the note */
	Resonating(Instrument instrument, TargetNote note, Resonance played) {
		this.instrument = instrument;
		this.note = note;
		near = Near.of(instrument, played.hertz());
		resistance = near.at().sounding(instrument.covered(note.fingering())).getReal();
	}

	TargetNote note() {
		return note;
	}

	/** By one of Newton's steps; nothing if there is no resonance left. */
	Optional<Shift> step(String hole, Cover cover) {
		return next(near, covered(hole, cover)).map(this::shift);
	}

	/** By as many of Newton's steps as it takes; nothing if there is no resonance left. */
	Optional<Shift> settled(String hole, Cover cover) {
		List<Part> covered = covered(hole, cover);
		Optional<Found> found = next(near, covered);
		double last = near.hertz();
		for (int step = 1; step < MOST_STEPS && found.isPresent(); step++) {
			double at = found.get().hertz();
			if (Math.abs(at - last) < SMALL * last) {
				break;
			}
			last = at;
			found = next(Near.of(instrument, at), covered);
		}
		return found.map(this::shift);
	}

	private record Found(double hertz, double resistance) {
	}

	private static Optional<Found> next(Near from, List<Part> covered) {
		Complex here = from.at().sounding(covered);
		Complex slope = from.above().sounding(covered).subtract(here).divide(from.hertz() * NEAR);
		double step = -here.getImaginary() / slope.getImaginary();
		return slope.getImaginary() <= 0 || !(from.hertz() + step > 0) ? Optional.empty()
				: Optional.of(new Found(from.hertz() + step, here.getReal() + step * slope.getReal()));
	}

	private Shift shift(Found found) {
		return new Shift(1200 * StrictMath.log(found.hertz() / near.hertz()) / StrictMath.log(2),
				20 * StrictMath.log10(resistance / found.resistance()));
	}

	private List<Part> covered(String hole, Cover cover) {
		return instrument.covered(note.fingering().with(hole, cover));
	}
}
