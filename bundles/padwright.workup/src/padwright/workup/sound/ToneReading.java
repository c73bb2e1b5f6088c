package padwright.workup.sound;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

import padwright.engine.acoustics.Cover;
import padwright.engine.acoustics.Fingering;
import padwright.engine.acoustics.TargetNote;
import padwright.engine.mechanism.FingerTouch;
import padwright.engine.mechanism.HoleState;
import padwright.engine.mechanism.MechanismState;
import padwright.engine.mechanism.Pressing;
import padwright.engine.pitch.NoteName;
import padwright.model.systems.EffectiveSystem;
import padwright.workup.mechanism.ClashPhrase;
import padwright.workup.mechanism.SystemFingering;
import padwright.workup.mechanism.SystemMechanism;
import padwright.workup.words.Listed;
import padwright.workup.words.Phrase;

/** The fingerings of a mechanism with the pitch each should have: the note and its cents at the system's pitch. */
final class ToneReading {

	private static final int A4_MIDI = 69;
	/** Share of a hole under a finger that covers it in part (an assumption of ours; no source). */
	private static final double HALF = 0.5;

	private final SystemMechanism mechanism;
	private final List<FingeredTone> tones = new ArrayList<>();
	private final List<LeftOutNote> leftOut = new ArrayList<>();

	ToneReading(SystemMechanism mechanism) {
		this.mechanism = mechanism;
		List<SystemFingering> fingerings = mechanism.fingerings();
		List<MechanismState> states =
				mechanism.mechanism().states(fingerings.stream().map(SystemFingering::pressing).toList());
		for (int index = 0; index < fingerings.size(); index++) {
			add(fingerings.get(index), states.get(index));
		}
	}

	List<FingeredTone> tones() {
		return List.copyOf(tones);
	}

	List<LeftOutNote> leftOut() {
		return List.copyOf(leftOut);
	}

	/** How the holes are covered while touches are pressed; nothing where keys contradict each other. */
	Optional<Fingering> covering(Pressing wished) {
		Set<String> known = mechanism.mechanism().touches().stream().map(FingerTouch::name).collect(Collectors.toSet());
		Pressing pressing = new Pressing(kept(wished.touches(), known), kept(wished.half(), known), Set.of());
		MechanismState state = mechanism.mechanism().state(pressing);
		return state.contradictions().isEmpty() ? Optional.of(new Fingering(covers(pressing, state))) : Optional.empty();
	}

	private static Set<String> kept(Set<String> touches, Set<String> known) {
		return touches.stream().filter(known::contains).collect(Collectors.toSet());
	}

	private void add(SystemFingering fingering, MechanismState state) {
		if (!fingering.missing().isEmpty()) {
			leaveOut(fingering, Phrase.of("sound.noTouch", String.join(", ", fingering.missing())));
		} else if (!state.contradictions().isEmpty()) {
			leaveOut(fingering, Phrase.of("sound.contradiction",
					new Listed(state.contradictions().stream().map(ClashPhrase::of).toList(), "; ")));
		} else {
			try {
				tones.add(new FingeredTone(fingering, new TargetNote(fingering.name(), hertz(fingering),
						new Fingering(covers(fingering.pressing(), state)))));
			} catch (IllegalArgumentException notANote) {
				leaveOut(fingering, Phrase.of("sound.noPitch", fingering.note()));
			}
		}
	}

	private void leaveOut(SystemFingering fingering, Phrase why) {
		leftOut.add(new LeftOutNote(fingering.name(), why));
	}

	private double hertz(SystemFingering fingering) {
		EffectiveSystem system = mechanism.system();
		BigDecimal semitones = system.transposition().add(fingering.cents().movePointLeft(2))
				.add(BigDecimal.valueOf(NoteName.parse(fingering.note()).midi() - A4_MIDI));
		return system.pitch().doubleValue() * StrictMath.pow(2, semitones.doubleValue() / 12);
	}

	private Map<String, Cover> covers(Pressing pressing, MechanismState state) {
		return state.holes().entrySet().stream()
				.collect(Collectors.toMap(Map.Entry::getKey, hole -> cover(hole.getKey(), hole.getValue(), pressing)));
	}

	/** A perforated pad that is down without a finger leaves the whole of its opening. */
	private Cover cover(String hole, HoleState state, Pressing pressing) {
		return switch (state) {
		case OPEN -> Cover.OPEN;
		case CLOSED -> Cover.CLOSED;
		case HALF -> new Cover.Partly(isUnderFinger(hole, pressing) ? HALF : 0);
		};
	}

	private boolean isUnderFinger(String hole, Pressing pressing) {
		return mechanism.mechanism().touches().stream()
				.anyMatch(touch -> touch.holes().contains(hole) && pressing.half().contains(touch.name()));
	}
}
