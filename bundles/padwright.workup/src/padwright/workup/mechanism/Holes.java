package padwright.workup.mechanism;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import padwright.engine.length.Length;
import padwright.engine.mechanism.CoveredHole;
import padwright.engine.mechanism.HoleCup;
import padwright.model.keysystem.CupStyle;
import padwright.model.keysystem.Touch;
import padwright.model.systems.EffectiveHole;
import padwright.model.systems.EffectiveJoint;
import padwright.model.systems.EffectiveKey;
import padwright.model.systems.EffectiveSystem;

/** The holes of a system with what covers them, from the head down; those without a place come last. */
final class Holes {

	/**
	 * A hole with what covers it.
	 *
	 * @param own where it is written by itself
	 * @param keys those with a cup over it
	 * @param touches those whose finger closes it, or the openings of its perforated cups
	 */
	record Covered(SystemHole hole, Optional<EffectiveHole> own, List<EffectiveKey> keys, List<HoleCup> cups,
			List<Touch> touches) {

		private Covered(SystemHole hole, Optional<EffectiveHole> own, List<Touch> touches) {
			this(hole, own, new ArrayList<>(), new ArrayList<>(), new ArrayList<>(touches));
		}

		CoveredHole forEngine() {
			return new CoveredHole(hole.name(), cups);
		}
	}

	private final Pieces pieces;
	private final Map<Object, Covered> found = new LinkedHashMap<>();
	private final Map<String, Integer> names = new HashMap<>();

	private Holes(EffectiveSystem system, Pieces pieces) {
		this.pieces = pieces;
		system.holes().stream().filter(hole -> Pieces.isName(hole.name())).forEach(this::add);
		pieces.keys().filter(key -> !key.isLever()).forEach(this::add);
	}

	static List<Covered> of(EffectiveSystem system, Pieces pieces) {
		Comparator<Covered> fromTheHead = Comparator.comparing(covered -> covered.hole().at(),
				Comparator.comparing(at -> at.map(Length::nanometres).orElse(Long.MAX_VALUE)));
		return new Holes(system, pieces).found.values().stream().sorted(fromTheHead).toList();
	}

	private void add(EffectiveHole hole) {
		SystemHole own = new SystemHole(unlike(hole.name()), joint(hole.joint()),
				place(hole.joint(), hole.place(), hole.position()), hole.around());
		found.put(hole.definition(), new Covered(own, Optional.of(hole), hole.touches()));
	}

	private void add(EffectiveKey key) {
		Optional<Object> elsewhere = key.over().<Object>map(EffectiveHole::definition).filter(found::containsKey);
		Covered covered = found.computeIfAbsent(elsewhere.orElse(key.definition()), own -> ownHole(key));
		boolean isPerforated = key.cupStyle().filter(CupStyle.PERFORATED::equals).isPresent();
		covered.keys().add(key);
		covered.cups().add(new HoleCup(pieces.nameOf(key), isPerforated));
		if (isPerforated) {
			covered.touches().addAll(key.touches());
		}
	}

	private Covered ownHole(EffectiveKey key) {
		SystemHole own = new SystemHole(unlike(key.name()), joint(key.joint()),
				place(key.joint(), key.place(), key.position()), key.around());
		return new Covered(own, Optional.empty(), List.of());
	}

	/** A hole and a key may have one name. */
	private String unlike(String name) {
		int number = names.merge(name, 1, Integer::sum);
		return number == 1 ? name : unlike(name + " " + number);
	}

	/** Where a system has no joints, all is on one tube; where a joint above has no length, the place is not known. */
	private static Optional<Length> place(Optional<EffectiveJoint> joint, Optional<Length> place,
			Optional<Length> position) {
		return joint.isPresent() ? place : position;
	}

	private static Optional<String> joint(Optional<EffectiveJoint> joint) {
		return joint.map(EffectiveJoint::name);
	}
}
