package padwright.views.sound;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;

import padwright.drawing.scene.Element;
import padwright.drawing.scene.Scene;
import padwright.engine.acoustics.ResonanceCurve.Point;
import padwright.views.Messages;
import padwright.views.Palette;
import padwright.workup.sound.ToneSound;

/** Cents of the scale, and below them how the instrument answers in the chosen fingering; nothing where nothing sounds. */
public final class SoundScene {

	/** Names the mark of a note in the drawing. */
	public static final String NOTE = CentsChart.NOTE;

	private static final double LEAST_WIDTH = 130;
	private static final double LEAST_HEIGHT = 90;
	private static final double MARGIN = 3;
	private static final double HEADING = 5;
	/** Of the height, for the cents. */
	private static final double SHARE = 0.5;
	/** Around the notes where there is no curve, in semitones. */
	private static final double AROUND = 2;

	private SoundScene() {
	}

	/** @param aspect width over height of the window */
	public static Scene draw(SoundSession session, Palette palette, double aspect) {
		double width = Math.max(LEAST_WIDTH, LEAST_HEIGHT * aspect);
		double height = width / aspect;
		return new Scene(Messages.of("sound.name"), width, height, charts(session, palette, width, height));
	}

	private static List<Element> charts(SoundSession session, Palette palette, double width, double height) {
		List<Element> elements = new ArrayList<>();
		OptionalDouble lowest = pitches(session).min();
		if (lowest.isEmpty()) {
			return elements;
		}
		double left = MARGIN + SoundFrame.NUMBERS;
		double room = height - 2 * (HEADING + SoundFrame.NAMES) - MARGIN;
		SoundFrame cents = new SoundFrame(palette, left, HEADING, width - left - MARGIN, room * SHARE,
				lowest.getAsDouble(), pitches(session).max().orElseThrow());
		SoundFrame curve = new SoundFrame(palette, left, cents.bottom() + SoundFrame.NAMES + HEADING, cents.width(),
				room * (1 - SHARE), cents.lowest(), cents.highest());
		elements.addAll(new CentsChart(session, cents).draw());
		session.curve().ifPresent(heard -> elements.addAll(new CurveChart(heard, curve).draw()));
		return elements;
	}

	/** The ends of the curve, or else those of the notes. */
	private static DoubleStream pitches(SoundSession session) {
		List<Point> points = session.curve().flatMap(CurveHeard::curve).map(curve -> curve.points()).orElse(List.of());
		if (!points.isEmpty()) {
			PitchAxis axis = session.curve().orElseThrow().axis();
			return points.stream().mapToDouble(point -> axis.semitone(point.hertz()));
		}
		return session.notes().stream().mapToDouble(SoundScene::semitone)
				.flatMap(semitone -> DoubleStream.of(semitone - AROUND, semitone + AROUND));
	}

	private static double semitone(ToneSound note) {
		return note.tone().writtenCents() / 100.0;
	}
}
