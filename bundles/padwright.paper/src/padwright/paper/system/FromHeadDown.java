package padwright.paper.system;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

import padwright.engine.length.Length;
import padwright.model.systems.EffectiveJoint;
import padwright.model.systems.EffectiveKey;
import padwright.model.systems.EffectiveSystem;

/** The order of a sheet: from the upper end of the instrument down, also where a system adds to one that it is based on. */
final class FromHeadDown {

	private FromHeadDown() {
	}

	/** Keys with a hole or a cup of which the place is said, then the others, in the order of the system. */
	static List<EffectiveKey> keys(EffectiveSystem system) {
		List<String> joints = system.joints().stream().map(EffectiveJoint::name).toList();
		return system.keys().stream().sorted(Comparator.comparing((EffectiveKey key) -> place(key).isEmpty())
				.thenComparing(key -> place(key).flatMap(at -> key.joint()).map(joint -> joints.indexOf(joint.name())).orElse(0))
				.thenComparing(key -> place(key).orElse(Length.ZERO))).toList();
	}

	private static Optional<Length> place(EffectiveKey key) {
		return key.position().filter(at -> key.holeDiameter().isPresent() || key.cupDiameter().isPresent());
	}
}
