package padwright.benchmarks;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

import padwright.engine.acoustics.AirModel;
import padwright.engine.acoustics.BorePoint;
import padwright.engine.acoustics.Cup;
import padwright.engine.acoustics.Fingering;
import padwright.engine.acoustics.Hole;
import padwright.engine.acoustics.Instrument;
import padwright.engine.acoustics.Layout;
import padwright.engine.acoustics.Mouth;
import padwright.engine.acoustics.SoundModel;
import padwright.engine.acoustics.TargetNote;
import padwright.engine.pitch.NoteName;

/**
 * A flute of 17 holes with five perforated pads and its scale of three octaves. All sizes are invented, and brought in
 * tune for the first two.
 */
final class SoundFlute {

	/** Of the holes from the head joint: place and diameter in mm. */
	private static final double[][] HOLES = { { 204.7, 7.8 }, { 215.2, 7.8 }, { 247.1, 7.2 }, { 275.6, 12.6 },
			{ 295.5, 12.8 }, { 316.9, 13 }, { 337.7, 13.2 }, { 360.9, 13.2 }, { 361, 13.2 }, { 384.8, 13.6 },
			{ 410.1, 13.8 }, { 437, 14 }, { 465.1, 14.2 }, { 495.1, 14.8 }, { 527.8, 15.2 }, { 558.9, 15.4 },
			{ 592.7, 15.6 } };
	private static final List<Integer> PERFORATED = List.of(5, 7, 10, 11, 12);
	private static final String FIRST = "C4";
	/** Usual fingerings from C4 on, a hole a letter from the head joint, x closed, o open. */
	private static final String SCALE = """
			xxxxxxxxxxxxxxxxo xxxxxxxxxxxxxxxoo xxxxxxxxxxxxxxooo xxxxxxxxxxxxxoooo xxxxxxxxxxxxooooo xxxxxxxxxxxoooooo
			xxxxxxxxxxooxoooo xxxxxxxxxoooooooo xxxxxxxxooooooooo xxxxxxooxoooooooo xxxxxoooxxxoooooo xxxxooooxoooooooo
			xxxoooooxoooooooo xxooooooxoooooooo xxoxxxxxxxxxxxooo xxoxxxxxxxxxxoooo xxxxxxxxxxxxooooo xxxxxxxxxxxoooooo
			xxxxxxxxxxooxoooo xxxxxxxxxoooooooo xxxxxxxxooooooooo xxxxxxooxoooooooo xxxxxoooxxxoooooo xxxxooooxoooooooo
			xxxoooooxoooooooo xxooooooxoooooooo xxoxxxxxxoooooooo xxxxxxxxoxxxxoooo xxxxxxooxxxxooooo xxxxxoxxxxxoooooo
			xxxxooxxxxooxoooo xxxoxxxxxoooooooo xxooxxxxooooooooo xxoxxxooxxxoooooo xooxxoooxxxoooooo oxxxooxxxoooooooo
			xxxoxxxxoxxooxoox
			""";

	static final SoundModel MODEL = SoundModel.in(AirModel.damp(0.9, 0.02).at(26));

	private SoundFlute() {
	}

	static Instrument instrument() {
		List<BorePoint> bore = List.of(new BorePoint(-0.013, 0.0185), new BorePoint(0.125, 0.019),
				new BorePoint(0.6598, 0.019));
		Layout layout = new Layout(bore, Optional.of(new Mouth(0, 0.011, 0.005, 0)),
				IntStream.range(0, HOLES.length).mapToObj(SoundFlute::hole).toList());
		return new Instrument(layout, MODEL);
	}

	private static Hole hole(int index) {
		double diameter = HOLES[index][1] / 1000;
		double opening = PERFORATED.contains(index) ? 0.006 : 0;
		Cup cup = new Cup(diameter + 0.004, 0.003, opening, 0.0035);
		return new Hole(name(index), HOLES[index][0] / 1000, diameter, 0.0026, 0.0005, Optional.of(cup));
	}

	static List<TargetNote> scale() {
		List<String> fingerings = Arrays.asList(SCALE.strip().split("\\s+"));
		int first = NoteName.parse(FIRST).midi();
		List<TargetNote> notes = new ArrayList<>();
		for (int step = 0; step < fingerings.size(); step++) {
			NoteName note = NoteName.ofMidi(first + step);
			notes.add(new TargetNote(note.toString(), note.frequency(), fingering(fingerings.get(step))));
		}
		return notes;
	}

	private static Fingering fingering(String holes) {
		return Fingering.closing(IntStream.range(0, holes.length()).filter(index -> holes.charAt(index) == 'x')
				.mapToObj(SoundFlute::name).toList());
	}

	private static String name(int index) {
		return "hole " + (index + 1);
	}
}
