package padwright.model.systems;

import java.math.BigDecimal;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;

import padwright.engine.length.Length;
import padwright.model.Resolved;
import padwright.model.keysystem.Change;
import padwright.model.keysystem.Fingering;
import padwright.model.keysystem.Hole;
import padwright.model.keysystem.HoleChange;
import padwright.model.keysystem.HoleRemoval;
import padwright.model.keysystem.Joint;
import padwright.model.keysystem.JointChange;
import padwright.model.keysystem.JointRemoval;
import padwright.model.keysystem.Key;
import padwright.model.keysystem.KeyChange;
import padwright.model.keysystem.KeyRemoval;
import padwright.model.keysystem.KeySystem;
import padwright.model.keysystem.NoteRemoval;
import padwright.model.keysystem.Removal;
import padwright.model.keysystem.Rod;
import padwright.model.keysystem.RodChange;
import padwright.model.keysystem.RodRemoval;
import padwright.model.keysystem.Titled;
import padwright.model.keysystem.Touch;
import padwright.model.keysystem.TouchChange;
import padwright.model.keysystem.TouchRemoval;

/**
 * A key system with all that it inherits: what the systems have that it is based on, outermost first, changed and removed
 * as each says, then its own. A system that is based on itself is cut where the circle closes.
 */
public final class EffectiveSystem {

	/** The usual A, in Hz. */
	public static final BigDecimal USUAL_PITCH = BigDecimal.valueOf(440);

	/** Of the air at that pitch, in °C: common practice, no source. */
	public static final BigDecimal USUAL_TEMPERATURE = BigDecimal.valueOf(20);

	/** The joint that is meant where none is said, if the system has one of this name. */
	private static final String MAIN_JOINT = "body";

	private final Map<Joint, EffectiveJoint> joints = new LinkedHashMap<>();
	private final Map<Touch, EffectiveTouch> touches = new LinkedHashMap<>();
	private final Map<Hole, EffectiveHole> holes = new LinkedHashMap<>();
	private final Map<Key, EffectiveKey> keys = new LinkedHashMap<>();
	private final Map<Rod, EffectiveRod> rods = new LinkedHashMap<>();
	private final Collection<KeySystem> lineage;
	private Map<String, List<Fingering>> fingerings;

	private EffectiveSystem(Collection<KeySystem> lineage) {
		this.lineage = lineage;
		lineage.forEach(this::add);
	}

	public static EffectiveSystem of(KeySystem system) {
		return new EffectiveSystem(lineage(system));
	}

	/** The system and all that it is based on, the outermost base first; each once, even in a circle. */
	public static Collection<KeySystem> lineage(KeySystem system) {
		Set<KeySystem> seen = new LinkedHashSet<>();
		Deque<KeySystem> outermostFirst = new ArrayDeque<>();
		Optional<KeySystem> next = Resolved.of(system);
		while (next.isPresent() && seen.add(next.get())) {
			outermostFirst.addFirst(next.get());
			next = Resolved.of(next.get().getBase());
		}
		return outermostFirst;
	}

	private void add(KeySystem system) {
		system.getRemovals().forEach(this::remove);
		system.getJoints().forEach(joint -> joints.put(joint, new EffectiveJoint(joint, List.of(joint))));
		system.getTouches().forEach(touch -> touches.put(touch, new EffectiveTouch(touch, List.of(touch), this)));
		system.getHoles().forEach(hole -> holes.put(hole, new EffectiveHole(hole, List.of(hole), this)));
		system.getKeys().forEach(key -> keys.put(key, new EffectiveKey(key, List.of(key), this)));
		system.getRods().forEach(rod -> rods.put(rod, new EffectiveRod(rod, List.of(rod), this)));
		system.getChanges().forEach(this::change);
	}

	private void remove(Removal removal) {
		if (removal instanceof KeyRemoval key) {
			keys.remove(key.getKey());
		} else if (removal instanceof TouchRemoval touch) {
			touches.remove(touch.getTouch());
		} else if (removal instanceof HoleRemoval hole) {
			holes.remove(hole.getHole());
		} else if (removal instanceof RodRemoval rod) {
			rods.remove(rod.getRod());
		} else if (removal instanceof JointRemoval joint) {
			joints.remove(joint.getJoint());
		}
	}

	private void change(Change change) {
		if (change instanceof KeyChange key) {
			keys.computeIfPresent(key.getKey(), (of, effective) -> effective.changedBy(key));
		} else if (change instanceof TouchChange touch) {
			touches.computeIfPresent(touch.getTouch(), (of, effective) -> effective.changedBy(touch));
		} else if (change instanceof HoleChange hole) {
			holes.computeIfPresent(hole.getHole(), (of, effective) -> effective.changedBy(hole));
		} else if (change instanceof RodChange rod) {
			rods.computeIfPresent(rod.getRod(), (of, effective) -> effective.changedBy(rod));
		} else if (change instanceof JointChange joint) {
			joints.computeIfPresent(joint.getJoint(), (of, effective) -> effective.changedBy(joint));
		}
	}

	/** Whether a joint, touch, hole, key or rod is one of this system. */
	public boolean has(Titled definition) {
		return Stream.of(joints, touches, holes, keys, rods).anyMatch(kind -> kind.containsKey(definition));
	}

	/** From the upper end down: in the order of definition, inherited ones first. */
	public Collection<EffectiveJoint> joints() {
		return joints.values();
	}

	/** The joint as it is in this system; nothing if it is not one of its joints. */
	public Optional<EffectiveJoint> joint(Joint definition) {
		return Optional.ofNullable(joints.get(definition));
	}

	/** The joint that is meant where none is said: the one called {@code body}, else the first. */
	public Optional<EffectiveJoint> mainJoint() {
		return joints.values().stream().filter(joint -> MAIN_JOINT.equals(joint.name())).findFirst()
				.or(() -> joints.values().stream().findFirst());
	}

	/** The upper end of a joint from that of the main joint, negative above it; nothing where a length between is not said. */
	public Optional<Length> upperEnd(EffectiveJoint joint) {
		List<EffectiveJoint> order = List.copyOf(joints.values());
		int main = mainJoint().map(order::indexOf).orElse(0);
		int at = order.indexOf(joint);
		Optional<Length> distance = Optional.of(Length.ZERO);
		for (EffectiveJoint between : order.subList(Math.min(main, at), Math.max(main, at))) {
			distance = distance.flatMap(sum -> between.length().map(sum::plus));
		}
		return at < main ? distance.map(Length::negated) : distance;
	}

	/** In the order of definition, inherited ones first. */
	public Collection<EffectiveTouch> touches() {
		return touches.values();
	}

	/** The touch as it is in this system; nothing if it is not one of its touches. */
	public Optional<EffectiveTouch> touch(Touch definition) {
		return Optional.ofNullable(touches.get(definition));
	}

	/** The holes that are written by themselves, in the order of definition, inherited ones first. */
	public Collection<EffectiveHole> holes() {
		return holes.values();
	}

	/** The hole as it is in this system; nothing if it is not one of its holes. */
	public Optional<EffectiveHole> hole(Hole definition) {
		return Optional.ofNullable(holes.get(definition));
	}

	/** Levers too, in the order of definition, inherited ones first. */
	public Collection<EffectiveKey> keys() {
		return keys.values();
	}

	/** The keys with a pad. */
	public List<EffectiveKey> pads() {
		return keys.values().stream().filter(key -> !key.isLever()).toList();
	}

	/** The key as it is in this system; nothing if it is not one of its keys. */
	public Optional<EffectiveKey> key(Key definition) {
		return Optional.ofNullable(keys.get(definition));
	}

	/** In the order of definition, inherited ones first. */
	public Collection<EffectiveRod> rods() {
		return rods.values();
	}

	/** The rod as it is in this system; nothing if it is not one of its rods. */
	public Optional<EffectiveRod> rod(Rod definition) {
		return Optional.ofNullable(rods.get(definition));
	}

	/** The A that it is tuned to, in Hz: the nearest that is said. */
	public BigDecimal pitch() {
		return nearest(KeySystem::getPitch).orElse(USUAL_PITCH);
	}

	/** Of the air in it at that pitch, in °C: the nearest that is said. */
	public BigDecimal temperature() {
		return nearest(KeySystem::getTemperature).orElse(USUAL_TEMPERATURE);
	}

	/** How many semitones a written note sounds higher. */
	public BigDecimal transposition() {
		return nearest(KeySystem::getTransposition).orElse(BigDecimal.ZERO);
	}

	private <T> Optional<T> nearest(Function<KeySystem, T> feature) {
		return lineage.stream().flatMap(system -> Optional.ofNullable(feature.apply(system)).stream())
				.reduce((outer, inner) -> inner);
	}

	/** All fingerings by note, with its cents where it has some, in the order of definition. */
	public Map<String, List<Fingering>> fingerings() {
		if (fingerings == null) {
			Map<String, List<Fingering>> all = new LinkedHashMap<>();
			lineage.forEach(system -> {
				removedNotes(system).forEach(removal -> removal.takeFrom(all));
				all.putAll(fingerings(system));
			});
			fingerings = all;
		}
		return fingerings;
	}

	private static List<RemovedNote> removedNotes(KeySystem system) {
		return system.getRemovals().stream().filter(NoteRemoval.class::isInstance)
				.map(removal -> new RemovedNote((NoteRemoval) removal)).toList();
	}

	private static Map<String, List<Fingering>> fingerings(KeySystem system) {
		Map<String, List<Fingering>> own = new LinkedHashMap<>();
		for (Fingering fingering : system.getFingerings()) {
			own.computeIfAbsent(NotePitch.of(fingering), note -> new ArrayList<>()).add(fingering);
		}
		return own;
	}
}
