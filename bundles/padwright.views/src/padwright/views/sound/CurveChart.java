package padwright.views.sound;

import java.util.ArrayList;
import java.util.List;

import padwright.drawing.scene.Anchor;
import padwright.drawing.scene.Circle;
import padwright.drawing.scene.Drawn;
import padwright.drawing.scene.Element;
import padwright.drawing.scene.Face;
import padwright.drawing.scene.Path;
import padwright.drawing.scene.Stroke;
import padwright.drawing.scene.Style;
import padwright.drawing.scene.Text;
import padwright.engine.acoustics.Resonance;
import padwright.engine.acoustics.ResonanceCurve;
import padwright.engine.acoustics.ResonanceCurve.Point;
import padwright.views.Messages;
import padwright.views.Palette;
import padwright.workup.report.Figures;

/** How the instrument answers in the fingering that is chosen or pressed, over the same pitches as the scale. */
record CurveChart(CurveHeard heard, SoundFrame frame) {

	private static final double STEP = 10;
	private static final double LEAST = -20;
	private static final double LEAST_MOST = 20;
	/** For the names of the highest peaks, in dB. */
	private static final double HEADROOM = 6;
	private static final double LINE = 0.45;
	private static final double RADIUS = 1;
	/** Room that the name of a resonance needs. */
	private static final double NAME = 8;
	private static final int[] HERTZ = { 200, 300, 500, 700, 1000, 1500, 2000, 3000, 4000, 6000 };

	List<Element> draw() {
		Palette palette = frame.palette();
		List<Element> elements = new ArrayList<>(frame.outline(Messages.of("sound.curve", heard.note()
				.orElseGet(() -> Messages.of("sound.asPressed")))));
		heard.curve().ifPresent(curve -> {
			double most = most(curve);
			for (double value = LEAST; value <= most; value += STEP) {
				elements.addAll(frame.level(frame.y(value, LEAST, most), Figures.number(value, 0).replace('-', '\u2212'),
						value == 0));
			}
			elements.addAll(hertz());
			heard.target().ifPresent(target -> elements.add(frame.upright(heard.axis().semitone(target),
					Style.stroked(Stroke.of(palette.accent(), LINE).dashed(1.2, 1.2)))));
			elements.add(new Drawn(line(curve, most), Style.stroked(palette.read(), LINE)));
			peaks(curve, most, elements);
		});
		return elements;
	}

	private static double most(ResonanceCurve curve) {
		double highest = curve.points().stream().mapToDouble(Point::decibels).max().orElse(0);
		return Math.max(LEAST_MOST, STEP * Math.ceil((highest + HEADROOM) / STEP));
	}

	private List<Element> hertz() {
		List<Element> numbers = new ArrayList<>();
		for (int hertz : HERTZ) {
			double semitone = heard.axis().semitone(hertz);
			if (semitone > frame.lowest() && semitone < frame.highest()) {
				numbers.add(Text.of(hertz + (numbers.isEmpty() ? " Hz" : ""), frame.x(semitone),
						frame.bottom() + SoundFrame.SIZE * 1.2, Face.CONDENSED, SoundFrame.SIZE).anchored(Anchor.MIDDLE)
						.in(frame.palette().quiet()));
			}
		}
		return numbers;
	}

	private Path line(ResonanceCurve curve, double most) {
		Path.Recorder line = new Path.Recorder();
		boolean isFirst = true;
		for (Point point : curve.points()) {
			double x = frame.x(heard.axis().semitone(point.hertz()));
			double y = frame.y(point.decibels(), LEAST, most);
			if (isFirst) {
				line.moveTo(x, y);
			} else {
				line.lineTo(x, y);
			}
			isFirst = false;
		}
		return line.path();
	}

	/** The one that is played first, so that its name is there. */
	private void peaks(ResonanceCurve curve, double most, List<Element> elements) {
		Palette palette = frame.palette();
		List<Resonance> peaks = new ArrayList<>(curve.resonances());
		heard.played().ifPresent(played -> {
			peaks.remove(played);
			peaks.add(0, played);
		});
		List<Double> named = new ArrayList<>();
		for (Resonance peak : peaks) {
			boolean isPlayed = named.isEmpty();
			double x = frame.x(heard.axis().semitone(peak.hertz()));
			double y = frame.y(peak.decibels(), LEAST, most);
			elements.add(new Drawn(new Circle(x, y, isPlayed ? RADIUS * 1.4 : RADIUS),
					Style.filled(isPlayed ? palette.accent() : palette.read())));
			if (named.stream().noneMatch(other -> Math.abs(other - x) < NAME)) {
				elements.add(Text.of(heard.axis().note(peak.hertz()), x, y - 1.9, Face.CONDENSED, SoundFrame.SIZE)
						.anchored(Anchor.MIDDLE).in(isPlayed ? palette.accent() : palette.ink()));
				named.add(x);
			}
		}
	}
}
