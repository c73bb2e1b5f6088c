package padwright.views.sound;

import java.util.Optional;

import padwright.engine.acoustics.Resonance;
import padwright.engine.acoustics.ResonanceCurve;

/**
 * How the instrument answers in the fingering that is chosen or pressed.
 *
 * @param note its name; nothing where touches are pressed that no note was chosen by
 * @param target the pitch that the note should have, in Hz
 * @param curve nothing where there is no air column, or keys contradict each other
 * @param why in words, where there is nothing
 */
public record CurveHeard(SoundWish wish, PitchAxis axis, Optional<String> note, Optional<Double> target,
		Optional<ResonanceCurve> curve, String why) {

	/** That of the note, or the lowest where touches are pressed. */
	public Optional<Resonance> played() {
		return curve.flatMap(known -> target.isPresent() ? known.played(target.get())
				: known.resonances().stream().findFirst());
	}

	/** What is tempered beside it: the pitch of the note, or the nearest to what is played. */
	public Optional<Double> tempered() {
		return target.or(() -> played().map(Resonance::hertz).map(hertz -> axis.hertz(Math.rint(axis.semitone(hertz)))));
	}

	/** How many cents the played resonance lies above the tempered pitch. */
	public Optional<Double> cents() {
		return played().flatMap(played -> tempered().map(played::centsAbove));
	}

	/** By how many dB it is stronger than the next one. */
	Optional<Double> strength() {
		return played().flatMap(played -> curve.orElseThrow().resonances().stream()
				.filter(other -> other.hertz() > played.hertz()).findFirst()
				.map(next -> played.decibels() - next.decibels()));
	}
}
