package padwright.workup.mechanism;

import java.math.BigDecimal;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import padwright.engine.mechanism.FingerTouch;
import padwright.engine.mechanism.FingeringReview;
import padwright.engine.mechanism.Mechanism;
import padwright.engine.mechanism.MechanismState;
import padwright.engine.mechanism.MovingKey;
import padwright.engine.mechanism.Rest;
import padwright.engine.mechanism.TouchFeel;
import padwright.engine.mechanism.TriedFingering;
import padwright.model.keysystem.Posture;
import padwright.model.keysystem.Touch;
import padwright.model.systems.EffectiveHole;
import padwright.model.systems.EffectiveKey;
import padwright.model.systems.EffectiveSystem;
import padwright.model.systems.EffectiveTouch;

/**
 * A key system as a mechanism: keys that turn as one piece are one key of it, named after the one that the others are
 * written to turn with. It bears half-typed systems: what cannot be understood is left out, and checks tell of it.
 */
public final class SystemMechanism {

	private final EffectiveSystem system;
	private final Pieces pieces;
	private final List<Holes.Covered> holes;
	private final Mechanism mechanism;
	private final List<SystemFingering> fingerings;

	private SystemMechanism(EffectiveSystem system) {
		this.system = system;
		pieces = new Pieces(system);
		holes = Holes.of(system, pieces);
		mechanism = new Mechanism(pieces.all().stream().map(SystemMechanism::moving).toList(),
				holes.stream().map(Holes.Covered::forEngine).toList(), touches(), Links.of(pieces));
		fingerings = Fingerings.of(system, mechanism);
	}

	public static SystemMechanism of(EffectiveSystem system) {
		return new SystemMechanism(system);
	}

	public EffectiveSystem system() {
		return system;
	}

	public Mechanism mechanism() {
		return mechanism;
	}

	/** In the order of the mechanism: from the head down. */
	public List<SystemHole> holes() {
		return holes.stream().map(Holes.Covered::hole).toList();
	}

	/** The hole as it is written by itself, if it is. */
	public Optional<EffectiveHole> definition(SystemHole hole) {
		return covered(hole).own();
	}

	/** The keys with a cup over a hole, in the order of the system. */
	public List<EffectiveKey> keysOver(SystemHole hole) {
		return List.copyOf(covered(hole).keys());
	}

	private Holes.Covered covered(SystemHole hole) {
		return holes.stream().filter(each -> each.hole().equals(hole)).findFirst().orElseThrow();
	}

	/** In the order of the system. */
	public List<SystemFingering> fingerings() {
		return fingerings;
	}

	public MechanismState state(SystemFingering fingering) {
		return mechanism.state(fingering.pressing());
	}

	/** What all fingerings together show. */
	public FingeringReview review() {
		return FingeringReview.of(mechanism, fingerings.stream()
				.map(each -> new TriedFingering(each.name(), each.pitch(), each.pressing())).toList());
	}

	/** All keys away from their rest, also those that turn with another, in the order of the system. */
	public List<String> moved(MechanismState state) {
		return pieces.keys().filter(key -> state.moved().containsKey(pieces.nameOf(key))).map(EffectiveKey::name)
				.toList();
	}

	/** The keys whose pad is down, in the order of the system. */
	public Set<String> closedPads(MechanismState state) {
		return pieces.keys().filter(key -> !key.isLever())
				.filter(key -> isOpen(key) == state.moved().containsKey(pieces.nameOf(key))).map(EffectiveKey::name)
				.collect(Collectors.toCollection(LinkedHashSet::new));
	}

	private boolean isOpen(EffectiveKey key) {
		return mechanism.keys().contains(new MovingKey(pieces.nameOf(key), Rest.OPEN));
	}

	/** What a finger feels at a touch of the mechanism, from the springs that the system states, in grams. */
	public TouchFeel feel(String touch) {
		return TouchFeel.of(mechanism, touch, springs());
	}

	/** By piece, in grams; a piece with several springs has their sum. */
	private Map<String, BigDecimal> springs() {
		Map<String, BigDecimal> springs = new LinkedHashMap<>();
		pieces.keys().forEach(key -> key.spring()
				.ifPresent(spring -> springs.merge(pieces.nameOf(key), spring, BigDecimal::add)));
		return springs;
	}

	private static MovingKey moving(EffectiveKey key) {
		return new MovingKey(key.name(), key.posture() == Posture.CLOSED ? Rest.CLOSED : Rest.OPEN);
	}

	/** Without touches that neither press a key nor cover a hole. */
	private List<FingerTouch> touches() {
		Set<String> names = new HashSet<>();
		return system.touches().stream().filter(touch -> Pieces.isName(touch.name())).flatMap(this::touch)
				.filter(touch -> names.add(touch.name())).toList();
	}

	private Stream<FingerTouch> touch(EffectiveTouch touch) {
		Touch definition = touch.definition();
		List<String> pressed = pieces.pressedBy(definition);
		List<String> covered = holes.stream().filter(hole -> hole.touches().contains(definition))
				.map(hole -> hole.hole().name()).toList();
		return pressed.isEmpty() && covered.isEmpty() ? Stream.empty()
				: Stream.of(new FingerTouch(touch.name(), pressed, covered));
	}
}
