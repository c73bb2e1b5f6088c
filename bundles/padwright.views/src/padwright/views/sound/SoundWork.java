package padwright.views.sound;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

import padwright.engine.acoustics.Fingering;
import padwright.engine.acoustics.Instrument;
import padwright.engine.acoustics.ResonanceCurve;
import padwright.engine.acoustics.TargetNote;
import padwright.model.keysystem.KeySystem;
import padwright.views.Messages;
import padwright.workup.sound.FingeredTone;
import padwright.workup.sound.ScaleSound;
import padwright.workup.sound.SystemSound;

/** Works out what the view shows; in the background, from any thread. What holds for a system is found once. */
public final class SoundWork {

	private static final int MOST_MISSING = 3;
	/** Beyond the lowest and the highest note, in semitones. */
	private static final int BELOW = 2;
	private static final int ABOVE = 5;

	private SystemSound last;

	/** How all fingerings sound. */
	public ScaleHeard scale(SoundWish wish) {
		SystemSound sound = sound(wish.system());
		Optional<ScaleSound> scale = sound.tones().isEmpty() ? Optional.empty()
				: sound.moved(wish.moved()).map(instrument -> ScaleSound.of(sound, instrument));
		return new ScaleHeard(wish, axis(sound), scale, why(sound));
	}

	/** How the chosen or pressed fingering sounds. */
	public CurveHeard curve(SoundWish wish) {
		SystemSound sound = sound(wish.system());
		if (wish.pressed().isPresent()) {
			Optional<Fingering> pressed = sound.covering(wish.pressed().get());
			return curve(wish, sound, Optional.empty(), pressed);
		}
		Optional<FingeredTone> tone = wish.note().flatMap(sound::tone).or(() -> sound.tones().stream().findFirst());
		return curve(wish, sound, tone.map(FingeredTone::note), tone.map(chosen -> chosen.note().fingering()));
	}

	private static CurveHeard curve(SoundWish wish, SystemSound sound, Optional<TargetNote> note,
			Optional<Fingering> fingering) {
		Optional<Instrument> instrument = sound.moved(wish.moved());
		Optional<ResonanceCurve> curve = sound.tones().isEmpty() ? Optional.empty()
				: fingering.flatMap(covered -> instrument.map(column -> curve(sound, column, covered)));
		String why = fingering.isEmpty() && !sound.tones().isEmpty() ? Messages.of("sound.contradiction") : why(sound);
		return new CurveHeard(wish, axis(sound), note.map(TargetNote::label), note.map(TargetNote::hertz), curve, why);
	}

	private static ResonanceCurve curve(SystemSound sound, Instrument column, Fingering covered) {
		List<Double> targets = sound.tones().stream().map(tone -> tone.note().hertz()).sorted(Comparator.naturalOrder())
				.toList();
		return ResonanceCurve.of(column, covered, targets.get(0) * StrictMath.pow(2, -BELOW / 12.0),
				targets.get(targets.size() - 1) * StrictMath.pow(2, ABOVE / 12.0));
	}

	private static PitchAxis axis(SystemSound sound) {
		return PitchAxis.of(sound.mechanism().system());
	}

	/** What is missing, or else why nothing sounds. */
	private static String why(SystemSound sound) {
		if (!sound.missing().isEmpty()) {
			return sound.missing().stream().map(size -> size.advice().inOneLine()).distinct().limit(MOST_MISSING)
					.collect(Collectors.joining("\n"));
		}
		return sound.tones().isEmpty() ? Messages.of("sound.noNotes") : Messages.of("sound.noColumn");
	}

	private synchronized SystemSound sound(KeySystem system) {
		if (last == null || last.system() != system) {
			last = SystemSound.of(system);
		}
		return last;
	}
}
