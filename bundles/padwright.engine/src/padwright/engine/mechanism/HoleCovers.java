package padwright.engine.mechanism;

import java.util.LinkedHashMap;
import java.util.Map;

/** From keys and fingers to holes. */
final class HoleCovers {

	private final Mechanism mechanism;
	private final Pressing pressing;
	private final Motion motion;

	private HoleCovers(Mechanism mechanism, Pressing pressing, Motion motion) {
		this.mechanism = mechanism;
		this.pressing = pressing;
		this.motion = motion;
	}

	static Map<String, HoleState> of(Mechanism mechanism, Pressing pressing, Motion motion) {
		HoleCovers covers = new HoleCovers(mechanism, pressing, motion);
		Map<String, HoleState> states = new LinkedHashMap<>();
		mechanism.holes().forEach(hole -> states.put(hole.name(), covers.state(hole)));
		return states;
	}

	private HoleState state(CoveredHole hole) {
		boolean isUnderCup = false;
		for (HoleCup cup : hole.cups()) {
			if (motion.isClosed(cup.key())) {
				if (!cup.isPerforated()) {
					return HoleState.CLOSED;
				}
				isUnderCup = true;
			}
		}
		HoleState finger = finger(hole.name());
		if (hole.cups().isEmpty()) {
			return finger;
		}
		return !isUnderCup ? HoleState.OPEN : finger == HoleState.CLOSED ? HoleState.CLOSED : HoleState.HALF;
	}

	private HoleState finger(String hole) {
		HoleState best = HoleState.OPEN;
		for (FingerTouch touch : mechanism.touches()) {
			if (touch.holes().contains(hole) && pressing.has(touch.name())) {
				HoleState covered = pressing.half().contains(touch.name()) ? HoleState.HALF : HoleState.CLOSED;
				best = covered.compareTo(best) > 0 ? covered : best;
			}
		}
		return best;
	}
}
