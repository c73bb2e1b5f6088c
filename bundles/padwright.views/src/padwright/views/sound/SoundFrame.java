package padwright.views.sound;

import java.util.ArrayList;
import java.util.List;

import padwright.drawing.scene.Anchor;
import padwright.drawing.scene.Drawn;
import padwright.drawing.scene.Element;
import padwright.drawing.scene.Face;
import padwright.drawing.scene.Ink;
import padwright.drawing.scene.Line;
import padwright.drawing.scene.Rectangle;
import padwright.drawing.scene.Style;
import padwright.drawing.scene.Text;
import padwright.engine.pitch.NoteName;
import padwright.views.Palette;

/**
 * One of two charts under each other over the same pitches.
 *
 * @param palette its colours
 * @param left of it in mm of the scene, without its numbers
 * @param top of it
 * @param width without its numbers
 * @param height of it
 * @param lowest pitch at its left edge, as a MIDI number with its fraction
 * @param highest pitch at its right edge
 */
record SoundFrame(Palette palette, double left, double top, double width, double height, double lowest, double highest) {

	static final double SIZE = 2.9;
	/** Left of a chart, for its numbers. */
	static final double NUMBERS = 11;
	/** Below a chart, for names. */
	static final double NAMES = 5;
	private static final double THIN = 0.2;
	private static final double FAINT = 0.25;
	/** Room that the name of a natural needs. */
	private static final double LETTER = 2.2;
	private static final int OCTAVE = 12;

	double bottom() {
		return top + height;
	}

	/** Where a pitch lies, at an edge where it lies beyond. */
	double x(double semitone) {
		return left + width * Math.max(0, Math.min(1, (semitone - lowest) / (highest - lowest)));
	}

	/** Where a value lies that runs from {@code least} at the bottom to {@code most} at the top. */
	double y(double value, double least, double most) {
		return bottom() - height * Math.max(0, Math.min(1, (value - least) / (most - least)));
	}

	Ink faint() {
		return palette.tint(palette.quiet(), FAINT);
	}

	List<Element> outline(String heading) {
		return List.of(new Drawn(new Rectangle(left, top, width, height), Style.stroked(faint(), THIN)),
				Text.of(heading, left, top - 1.4, Face.REGULAR, SIZE).in(palette.quiet()));
	}

	List<Element> level(double y, String number, boolean isStrong) {
		return List.of(new Drawn(new Line(left, y, left + width, y),
				Style.stroked(isStrong ? palette.quiet() : faint(), THIN)),
				Text.of(number, left - 1.2, y + SIZE * 0.36, Face.REGULAR, SIZE).anchored(Anchor.END).in(palette.quiet()));
	}

	/** A line down the chart. */
	Element upright(double semitone, Style style) {
		return new Drawn(new Line(x(semitone), top, x(semitone), bottom()), style);
	}

	/** The naturals by their letters, C with its octave; B, only half a tone below that, where there is room for both. */
	List<Element> names() {
		List<Element> names = new ArrayList<>();
		double natural = width / (highest - lowest) * OCTAVE / 7;
		for (int midi = (int) Math.ceil(lowest); midi <= highest; midi++) {
			NoteName note = NoteName.ofMidi(Math.max(0, Math.min(127, midi)));
			boolean isC = note.letter() == 'C' && note.accidental() == 0;
			if (isC) {
				names.add(upright(midi, Style.stroked(faint(), THIN)));
			}
			double room = note.letter() == 'B' ? 4 * LETTER : LETTER;
			if (note.accidental() == 0 && (isC || natural > room)) {
				names.add(Text.of(isC ? note.toString() : String.valueOf(note.letter()), x(midi), bottom() + SIZE * 1.2,
						Face.CONDENSED, SIZE).anchored(Anchor.MIDDLE).in(isC ? palette.ink() : palette.quiet()));
			}
		}
		return names;
	}
}
