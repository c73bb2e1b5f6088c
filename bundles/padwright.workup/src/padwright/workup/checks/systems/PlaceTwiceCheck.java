package padwright.workup.checks.systems;

import java.math.BigDecimal;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

import org.eclipse.emf.ecore.EObject;

import padwright.engine.length.Length;
import padwright.model.keysystem.KeySystem;
import padwright.model.keysystem.KeySystemPackage;
import padwright.model.keysystem.Placed;
import padwright.model.systems.EffectiveJoint;
import padwright.model.systems.EffectiveKey;
import padwright.model.systems.EffectiveHole;
import padwright.model.systems.EffectiveSystem;
import padwright.workup.checks.Advice;
import padwright.workup.checks.Check;
import padwright.workup.checks.Findings;
import padwright.workup.checks.IssueCodes;
import padwright.workup.checks.Place;

/** No two pads or holes lie at one place of one joint. Judged where the system itself places one of them. */
public final class PlaceTwiceCheck extends Check<KeySystem> {

	/** Of a pad or hole; its joint is empty in a system without joints. */
	private record Spot(String joint, Length position, BigDecimal around) {
	}

	/** What lies there, and what places it, the newest first. */
	private record Occupant(String name, List<? extends Placed> features) {
	}

	public PlaceTwiceCheck() {
		super(KeySystem.class);
	}

	@Override
	protected void check(KeySystem system, Findings findings) {
		EffectiveSystem effective = EffectiveSystem.of(system);
		Map<Spot, Occupant> taken = new HashMap<>();
		for (EffectiveHole hole : effective.holes()) {
			hole.position().ifPresent(at -> take(new Spot(joint(hole.joint().stream()), at, degrees(hole.around())),
					new Occupant(hole.name(), hole.features()), taken, system, findings));
		}
		for (EffectiveKey key : effective.pads()) {
			if (key.over().isEmpty()) {
				key.position().ifPresent(at -> take(new Spot(joint(key.joint().stream()), at, degrees(key.around())),
						new Occupant(key.name(), key.features()), taken, system, findings));
			}
		}
	}

	private static String joint(Stream<EffectiveJoint> joint) {
		return joint.map(EffectiveJoint::name).findFirst().orElse("");
	}

	/** 270 is the same place as -90. */
	private static BigDecimal degrees(BigDecimal around) {
		BigDecimal turn = around.remainder(BigDecimal.valueOf(360));
		return (turn.signum() < 0 ? turn.add(BigDecimal.valueOf(360)) : turn).stripTrailingZeros();
	}

	private static void take(Spot spot, Occupant occupant, Map<Spot, Occupant> taken, KeySystem system,
			Findings findings) {
		Occupant first = taken.putIfAbsent(spot, occupant);
		if (first == null) {
			return;
		}
		EObject placing = occupant.features().stream().filter(features -> features.eContainer() == system
				&& features.getPosition() != null).findFirst().orElse(null);
		if (placing != null) {
			findings.error(IssueCodes.PLACE_TWICE, Place.of(placing, KeySystemPackage.Literals.PLACED__POSITION),
					Advice.of(IssueCodes.PLACE_TWICE, occupant.name(), first.name()));
		}
	}
}
