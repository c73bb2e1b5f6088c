package padwright.engine.acoustics;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

import org.hipparchus.util.Binary64;

/** Instruments whose sizes are published, or invented where it says so. */
final class Tubes {

	static final SoundModel TWENTY = SoundModel.in(AirModel.CHAIGNE_KERGOMARD.at(20));

	private Tubes() {
	}

	/** Lengths in mm. */
	static BorePoint point(double place, double diameter) {
		return new BorePoint(place / 1000, diameter / 1000);
	}

	/** Without a cup; lengths in mm. */
	static Hole hole(int number, double place, double diameter, double chimney) {
		return new Hole(Integer.toString(number), place / 1000, diameter / 1000, chimney / 1000, 0.0004,
				Optional.empty());
	}

	/** An element by its sizes in m. */
	static Element sideHole(HoleModel model, boolean matched, double radius, double chimney, double bore,
			Ending ending) {
		boolean isClosed = ending instanceof Ending.Stopped || ending instanceof Ending.Leaking;
		return new SideHole(model, Neck.values(model.neck(new Junction<>(new Binary64(radius), new Binary64(chimney),
				new Binary64(bore), matched), isClosed)), ending);
	}

	/** A cylinder open at both ends; lengths in mm. */
	static Layout cylinder(double length, double diameter, Hole... holes) {
		return new Layout(List.of(point(0, diameter), point(length, diameter)), Optional.empty(), List.of(holes));
	}

	/** From {@code xxo}: hole 1 first, x closed, o open. */
	static Fingering fingering(String holes) {
		return Fingering.closing(IntStream.range(0, holes.length()).filter(index -> holes.charAt(index) == 'x')
				.mapToObj(index -> Integer.toString(index + 1)).toList());
	}

	/**
	 * The tube with four holes of A. Ernoult, J. Chabassier, S. Rodriguez and A. Humeau, Full waveform inversion for
	 * bore reconstruction of woodwind-like instruments, Acta Acustica 5 (2021) 47.
	 */
	static Layout fourHoles() {
		return cylinder(287.5, 4, hole(1, 100, 3, 1.7), hole(2, 130, 3.5, 1.3), hole(3, 180, 3.5, 1.5),
				hole(4, 240, 2.5, 1.4));
	}

	/** The flute with six holes of D. H. Keefe, Woodwind air column models, J. Acoust. Soc. Am. 88 (1990) 35–51. */
	static Layout sixHoles() {
		return cylinder(575.2, 18.9, hole(1, 286.4, 9.53, 3.4), hole(2, 323.4, 9.53, 3.4), hole(3, 359, 7.94, 3.4),
				hole(4, 412, 7.94, 3.4), hole(5, 436.4, 9.53, 3.4), hole(6, 475.7, 6.35, 3.4));
	}

	/** A transverse flute of invented sizes with cork, taper, embouchure hole and seven holes. */
	static Layout sevenHoles() {
		return new Layout(List.of(point(-17, 17.1), point(150, 19), point(600, 19)),
				Optional.of(new Mouth(0, 0.011, 0.005, 0)),
				List.of(hole(1, 250, 7, 2.5), hole(2, 300, 13, 2.5), hole(3, 340, 13.6, 2.5), hole(4, 385, 14, 2.5),
						hole(5, 435, 14.4, 2.5), hole(6, 485, 15, 2.5), hole(7, 540, 15, 2.5)));
	}

	/** A cylinder with an embouchure hole at 0 and a cork so many mm above it. */
	static Layout withCork(double cork, double length) {
		return new Layout(List.of(point(-cork, 19), point(length, 19)), Optional.of(new Mouth(0, 0.011, 0.005, 0)),
				List.of());
	}

	/** Frequencies in Hz at which the impedance has maxima or minima, by parabolas over so many points a hertz. */
	static List<Double> extrema(Instrument instrument, Fingering fingering, double from, double to, boolean maxima) {
		double step = 0.5;
		List<Double> found = new ArrayList<>();
		double[] levels = IntStream.rangeClosed(0, (int) ((to - from) / step))
				.mapToDouble(index -> (maxima ? 1 : -1)
						* Math.log(instrument.impedance(fingering, from + index * step).magnitude()))
				.toArray();
		for (int index = 1; index + 1 < levels.length; index++) {
			if (levels[index] > levels[index - 1] && levels[index] >= levels[index + 1]) {
				double bend = levels[index - 1] - 2 * levels[index] + levels[index + 1];
				found.add(from + step * (index + (levels[index - 1] - levels[index + 1]) / (2 * bend)));
			}
		}
		return found;
	}

	/** The resonances of a fingering from near this frequency on. */
	static List<Resonance> resonances(Instrument instrument, Fingering fingering, double first) {
		return instrument.sound(new TargetNote("first", first * 1.9, fingering)).resonances();
	}
}
