package padwright.paper.sound;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

import padwright.drawing.scene.Anchor;
import padwright.drawing.scene.Drawn;
import padwright.drawing.scene.Element;
import padwright.drawing.scene.Face;
import padwright.drawing.scene.Ink;
import padwright.drawing.scene.Line;
import padwright.drawing.scene.Stroke;
import padwright.drawing.scene.Style;
import padwright.drawing.scene.Text;
import padwright.paper.words.Messages;

/** Notes from left to right, by their pitch. */
final class NoteAxis {

	/** Of the names below a chart, mm. */
	static final double NAMES = 9.5;
	private static final double SIZE = 2.5;
	private static final Ink FAINT = Ink.grey(185);

	private final List<SoundMark> marks;
	private final double left;
	private final double width;
	private final double lowest;
	private final double step;

	/** @param left of the chart, {@code width} of it, mm */
	NoteAxis(List<SoundMark> marks, double left, double width) {
		this.marks = marks.stream().sorted(Comparator.comparingDouble(SoundMark::semitone)).toList();
		this.left = left;
		this.width = width;
		lowest = this.marks.get(0).semitone();
		step = width / (this.marks.get(this.marks.size() - 1).semitone() - lowest + 1);
	}

	List<SoundMark> marks() {
		return marks;
	}

	double x(SoundMark mark) {
		return left + (mark.semitone() - lowest + 0.5) * step;
	}

	/** How wide a note is, mm. */
	double step() {
		return step;
	}

	/** A dashed line before each octave but the first, with its number above where that is wanted. */
	List<Element> octaves(double top, double bottom, boolean named) {
		List<Element> elements = new ArrayList<>();
		int octave = 0;
		for (SoundMark mark : marks) {
			if (mark.octave() > octave) {
				double at = octave == 0 ? left : x(mark) - step / 2;
				octave = mark.octave();
				if (at > left) {
					elements.add(new Drawn(new Line(at, top, at, bottom),
							Style.stroked(Stroke.of(FAINT, 0.25).dashed(1, 1))));
				}
				if (named && at + 14 < left + width) {
					elements.add(Text.of(Messages.of("sound.octave", octave), at + 1, top + SIZE * 1.1, Face.CONDENSED, SIZE));
				}
			}
		}
		return elements;
	}

	/** The names of the notes: naturals in one row, others a little lower. */
	List<Element> names(double top) {
		List<Element> elements = new ArrayList<>();
		Set<String> seen = new HashSet<>();
		for (SoundMark mark : marks) {
			boolean isNatural = mark.name().length() == 2;
			boolean isBetween = mark.semitone() != Math.rint(mark.semitone());
			if (!isBetween && seen.add(mark.name())) {
				elements.add(new Drawn(new Line(x(mark), top, x(mark), top + (isNatural ? 1 : 3.6)),
						Style.stroked(FAINT, 0.2)));
				elements.add(Text.of(mark.name(), x(mark), top + (isNatural ? 3.4 : 6.2), Face.CONDENSED, SIZE * 0.9)
						.anchored(Anchor.MIDDLE));
			}
		}
		return elements;
	}
}
