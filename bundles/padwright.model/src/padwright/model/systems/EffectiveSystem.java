package padwright.model.systems;

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

import padwright.model.Present;
import padwright.model.keysystem.Fingering;
import padwright.model.keysystem.Key;
import padwright.model.keysystem.KeyChange;
import padwright.model.keysystem.KeyRemoval;
import padwright.model.keysystem.KeySystem;

/**
 * A key system with all that it inherits: the keys of the systems it extends, outermost first, changed and removed as
 * each says, then its own. A system that extends itself is cut where the circle closes.
 */
public final class EffectiveSystem {

	private final Map<Key, EffectiveKey> keys = new LinkedHashMap<>();
	private final Collection<KeySystem> lineage;
	private Map<String, List<Fingering>> fingerings;

	private EffectiveSystem(Collection<KeySystem> lineage) {
		this.lineage = lineage;
		lineage.forEach(this::add);
	}

	public static EffectiveSystem of(KeySystem system) {
		return new EffectiveSystem(lineage(system));
	}

	/** The system and all that it extends, the outermost base first; each once, even in a circle. */
	public static Collection<KeySystem> lineage(KeySystem system) {
		Set<KeySystem> seen = new LinkedHashSet<>();
		Deque<KeySystem> outermostFirst = new ArrayDeque<>();
		Optional<KeySystem> next = Present.of(system);
		while (next.isPresent() && seen.add(next.get())) {
			outermostFirst.addFirst(next.get());
			next = Present.of(next.get().getBase());
		}
		return outermostFirst;
	}

	private void add(KeySystem system) {
		for (KeyRemoval removal : system.getRemovals()) {
			keys.remove(removal.getKey());
		}
		for (Key key : system.getKeys()) {
			keys.put(key, new EffectiveKey(key, List.of(key)));
		}
		for (KeyChange change : system.getChanges()) {
			keys.computeIfPresent(change.getKey(), (key, effective) -> effective.changedBy(change));
		}
	}

	private static Map<String, List<Fingering>> fingerings(KeySystem system) {
		Map<String, List<Fingering>> own = new LinkedHashMap<>();
		for (Fingering fingering : system.getFingerings()) {
			own.computeIfAbsent(fingering.getNote(), note -> new ArrayList<>()).add(fingering);
		}
		return own;
	}

	/** In the order of definition, inherited ones first. */
	public Collection<EffectiveKey> keys() {
		return keys.values();
	}

	/** The key as it is in this system; nothing if it is not one of its keys. */
	public Optional<EffectiveKey> key(Key definition) {
		return Optional.ofNullable(keys.get(definition));
	}

	/** All fingerings by note, in the order of definition. */
	public Map<String, List<Fingering>> fingerings() {
		if (fingerings == null) {
			Map<String, List<Fingering>> all = new LinkedHashMap<>();
			lineage.forEach(system -> all.putAll(fingerings(system)));
			fingerings = all;
		}
		return fingerings;
	}
}
