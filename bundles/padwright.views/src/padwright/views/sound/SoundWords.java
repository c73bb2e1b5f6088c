package padwright.views.sound;

import java.util.Optional;
import java.util.stream.Collectors;

import padwright.engine.acoustics.Resonance;
import padwright.views.Messages;
import padwright.workup.report.Figures;
import padwright.workup.sound.ToneSound;

/** How notes sound, in words. */
final class SoundWords {

	private static final int MOST_RESONANCES = 5;
	/** Less is told as nought. */
	private static final double LEAST = 0.05;

	private SoundWords() {
	}

	/** Of a note of the scale, and how it was before something was dragged. */
	static String note(ToneSound note, Optional<ToneSound> before) {
		String name = note.tone().name();
		Optional<Double> cents = note.sound().cents();
		if (cents.isEmpty()) {
			return Messages.of("sound.silent", name);
		}
		String told = before.filter(was -> was != note).flatMap(was -> was.sound().cents())
				.map(was -> Messages.of("sound.fromTo", name, signed(was), signed(cents.get())))
				.orElseGet(() -> Messages.of("sound.note", name, signed(cents.get())));
		return note.sound().strength().map(strength -> Messages.of("sound.strength", told, signed(strength))).orElse(told);
	}

	/** Of what is pressed, resonance by resonance. */
	static String pressed(CurveHeard curve) {
		return curve.curve().filter(known -> !known.resonances().isEmpty())
				.map(known -> Messages.of("sound.pressed", known.resonances().stream().limit(MOST_RESONANCES)
						.map(peak -> resonance(peak, curve.axis())).collect(Collectors.joining(", "))))
				.orElse(curve.why());
	}

	static String resonance(Resonance peak, PitchAxis axis) {
		return Messages.of("sound.resonance", axis.note(peak.hertz()), signed(axis.cents(peak.hertz())),
				Figures.number(peak.hertz(), 1));
	}

	/** With a sign in front. */
	static String signed(double number) {
		String text = Figures.number(Math.abs(number), 1);
		return Math.abs(number) < LEAST ? Figures.number(0, 1) : (number > 0 ? "+" : "\u2212") + text;
	}
}
