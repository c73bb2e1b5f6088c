package padwright.workup.checks.systems;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

import padwright.engine.length.Length;
import padwright.model.keysystem.KeyFeatures;
import padwright.model.keysystem.KeySystem;
import padwright.model.keysystem.KeySystemPackage;
import padwright.model.systems.EffectiveKey;
import padwright.workup.checks.Advice;
import padwright.workup.checks.Check;
import padwright.workup.checks.Findings;
import padwright.workup.checks.IssueCodes;
import padwright.workup.checks.Place;
import padwright.workup.report.Figures;
import padwright.workup.sound.NoteVenting;
import padwright.workup.sound.PadVenting;
import padwright.workup.sound.ScaleSound;
import padwright.workup.sound.SystemSound;

/**
 * A pad that is raised so little, as for a quiet action, that a usual note is flat by it. Judged where a key or its change
 * gives the rise, and only for pads that hang low enough to do that: pitches take time.
 */
public final class RiseCheck extends Check<KeySystem> {

	/** About the least change of a pitch that is noticed: N. J. Hill and I. R. Summers, J. Acoust. Soc. Am. (2007). */
	private static final double NOTICED_CENTS = 10;
	/** A note that is nearer to its pitch is not called flat (an assumption of ours; no source). */
	private static final double FLAT_CENTS = 5;
	/** The forks of the third one the model knows too little of. */
	private static final int TRUSTED_OCTAVES = 2;
	/** Pads that are raised by a sixth of their hole and this do less, for every hole of the flutes that ship. */
	private static final Length BESIDES = Length.millimetres("0.3");
	private static final int SIXTH = 6;

	public RiseCheck() {
		super(KeySystem.class);
	}

	@Override
	protected void check(KeySystem system, Findings findings) {
		Map<String, KeyFeatures> low = new LinkedHashMap<>();
		WrittenKeys.forEach(system, (features, key) -> {
			if (features.getRise() != null && isLow(key)) {
				low.put(key.name(), features);
			}
		});
		SystemSound sound = low.isEmpty() ? null : SystemSound.of(system);
		if (sound != null && sound.instrument().isPresent()) {
			ScaleSound scale = ScaleSound.of(sound);
			PadVenting.of(sound, scale, low::containsKey).forEach(pad -> check(pad, scale, low.get(pad.key()), findings));
		}
	}

	/** Whether it may flatten a note at all. */
	static boolean isLow(EffectiveKey key) {
		Optional<Length> hole = key.holeDiameter();
		return hole.isPresent() && key.rise().filter(rise -> hole.get().isLongerThan(rise.minus(BESIDES).times(SIXTH)))
				.isPresent();
	}

	private static void check(PadVenting pad, ScaleSound scale, KeyFeatures features, Findings findings) {
		pad.notes().stream().filter(note -> note.cents() < -NOTICED_CENTS && isFlat(note, scale))
				.min(Comparator.comparingDouble(NoteVenting::cents))
				.ifPresent(note -> findings.warning(IssueCodes.RISE_LOW,
						Place.of(features, KeySystemPackage.Literals.KEY_FEATURES__RISE),
						Advice.of(IssueCodes.RISE_LOW, pad.key(), note.note(), Figures.number(-note.cents(), 0),
								pad.flatteningLessThan(NOTICED_CENTS).map(rise -> Figures.number(rise, 1)).orElse("20"))));
	}

	private static boolean isFlat(NoteVenting venting, ScaleSound scale) {
		return scale.scale().stream()
				.filter(note -> note.octave() <= TRUSTED_OCTAVES && note.tone().name().equals(venting.note()))
				.anyMatch(note -> note.sound().cents().filter(cents -> cents < -FLAT_CENTS).isPresent());
	}
}
