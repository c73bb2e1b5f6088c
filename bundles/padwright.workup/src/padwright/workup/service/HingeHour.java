package padwright.workup.service;

import java.util.Optional;
import java.util.stream.Stream;

import padwright.engine.clock.ClockHour;
import padwright.model.keysystem.ClockConvention;
import padwright.model.keysystem.ClockReference;
import padwright.model.keysystem.HingeSide;
import padwright.model.keysystem.KeySystem;
import padwright.model.systems.EffectiveKey;
import padwright.model.systems.EffectiveSystem;

/**
 * Where the hinge of a key stands on the clock of its pad.
 *
 * @param hour the hour that looks at the hinge
 * @param assumed whether the system sets its clock by the tube, and does not say on which side the hinge lies
 */
public record HingeHour(ClockHour hour, boolean assumed) {

	/** Where nothing is said of the clock. */
	public static final HingeHour UNSAID = new HingeHour(ClockHour.ofHour(12), false);

	/** Half hours of a quarter of the clock. */
	private static final int QUARTER = ClockHour.STATIONS / 4;

	/**
	 * By the innermost convention that a system has or inherits: 12 o'clock where there is none. Where an hour looks at the
	 * head or the foot, the hinge stands a quarter of the clock from it: the hours run clockwise as seen from the pad side,
	 * so from the head over the player's side to the foot. A hinge of which nothing is said lies on the player's side.
	 */
	public static HingeHour of(KeySystem system, EffectiveKey key) {
		return convention(system).filter(clock -> clock.getHour() != null).map(clock -> of(clock, key))
				.orElse(UNSAID);
	}

	private static Optional<ClockConvention> convention(KeySystem system) {
		return EffectiveSystem.lineage(system).stream().map(KeySystem::getClock).flatMap(Stream::ofNullable)
				.reduce((outer, inner) -> inner);
	}

	private static HingeHour of(ClockConvention clock, EffectiveKey key) {
		if (clock.getReference() == ClockReference.HINGE) {
			return new HingeHour(clock.getHour(), false);
		}
		boolean isAtHead = clock.getReference() == ClockReference.HEAD;
		boolean isFar = key.hinge().filter(HingeSide.FAR::equals).isPresent();
		return new HingeHour(clock.getHour().plusHalfHours(isAtHead == isFar ? -QUARTER : QUARTER),
				key.hinge().isEmpty());
	}
}
