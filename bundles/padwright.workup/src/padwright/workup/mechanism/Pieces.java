package padwright.workup.mechanism;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

import padwright.model.Resolved;
import padwright.model.keysystem.Key;
import padwright.model.keysystem.Touch;
import padwright.model.systems.EffectiveKey;
import padwright.model.systems.EffectiveSystem;

/**
 * Which keys of a system turn as one piece. A piece is named after the key that the others are written to turn with.
 * Keys without a name, and further ones of the same name, are left out: other checks tell of them.
 */
final class Pieces {

	private final List<EffectiveKey> keys;
	private final Map<Key, EffectiveKey> wholes = new LinkedHashMap<>();

	Pieces(EffectiveSystem system) {
		Set<String> names = new HashSet<>();
		system.keys().stream().filter(key -> isName(key.name()) && names.add(key.name()))
				.forEach(key -> wholes.put(key.definition(), whole(key)));
		wholes.values().removeIf(whole -> !wholes.containsKey(whole.definition()));
		keys = system.keys().stream().filter(key -> wholes.containsKey(key.definition())).toList();
	}

	static boolean isName(String name) {
		return name != null && !name.isBlank();
	}

	private static EffectiveKey whole(EffectiveKey key) {
		EffectiveKey whole = key;
		while (whole.whole().isPresent()) {
			whole = whole.whole().get();
		}
		return whole;
	}

	/** The keys that pieces are named after. */
	List<EffectiveKey> all() {
		return keys().filter(key -> wholes.get(key.definition()) == key).toList();
	}

	/** All keys that are part of a piece, in the order of the system. */
	Stream<EffectiveKey> keys() {
		return keys.stream();
	}

	/** The name of the piece that a key is part of; nothing for a key that the system lacks. */
	Optional<String> nameOf(Key key) {
		return Resolved.of(key).map(wholes::get).filter(Objects::nonNull).map(EffectiveKey::name);
	}

	String nameOf(EffectiveKey key) {
		return wholes.get(key.definition()).name();
	}

	/** The names of the pieces that a touch presses. */
	List<String> pressedBy(Touch touch) {
		return keys().filter(key -> key.touches().contains(touch)).map(this::nameOf).distinct().toList();
	}
}
