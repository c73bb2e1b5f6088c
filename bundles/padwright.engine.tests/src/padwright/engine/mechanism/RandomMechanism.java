package padwright.engine.mechanism;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.TreeSet;

/** Mechanisms of keys K0, K1 and so on, each with a hole and a touch of its own. */
final class RandomMechanism {

	private final SplittableRandom random;
	private final int keys;

	RandomMechanism(long seed, int keys) {
		random = new SplittableRandom(seed);
		this.keys = keys;
	}

	/** Links of any kind in any direction, or only from a key to later ones. */
	Mechanism any(int links, boolean onlyDown) {
		Map<String, KeyLink> all = new LinkedHashMap<>();
		while (all.size() < links) {
			int driver = random.nextInt(keys - 1);
			int driven = onlyDown ? random.nextInt(driver + 1, keys) : random.nextInt(keys);
			KeyLink link = driver == driven ? null
					: new KeyLink(name(driver), name(driven), Effect.values()[random.nextInt(3)]);
			if (link != null) {
				link = conditional(link, name(random.nextInt(onlyDown ? driven : keys)));
				all.put(link.toString(), link);
			}
		}
		return mechanism(List.copyOf(all.values()), random.nextInt(1 << keys));
	}

	private KeyLink conditional(KeyLink link, String key) {
		int kind = random.nextInt(6);
		return kind == 0 ? link.when(key) : kind == 1 ? link.unless(key) : link;
	}

	/** Keys that all stand open and only close each other. */
	Mechanism closing(int links) {
		Map<String, KeyLink> all = new LinkedHashMap<>();
		while (all.size() < links) {
			int driver = random.nextInt(keys);
			int driven = (driver + random.nextInt(1, keys)) % keys;
			KeyLink link = KeyLink.closes(name(driver), name(driven));
			all.put(link.toString(), random.nextInt(4) == 0 ? link.when(name(random.nextInt(keys))) : link);
		}
		return mechanism(List.copyOf(all.values()), 0);
	}

	/** Some of the touches. */
	Set<String> touches() {
		Set<String> touches = new TreeSet<>();
		for (int i = 0; i < keys; i++) {
			if (random.nextInt(3) == 0) {
				touches.add("T" + i);
			}
		}
		return touches;
	}

	<T> List<T> shuffled(List<T> things) {
		List<T> left = new ArrayList<>(things);
		List<T> shuffled = new ArrayList<>();
		while (!left.isEmpty()) {
			shuffled.add(left.remove(random.nextInt(left.size())));
		}
		return shuffled;
	}

	int next(int bound) {
		return random.nextInt(bound);
	}

	static Set<String> keysOf(Set<String> touches) {
		Set<String> keys = new TreeSet<>();
		touches.forEach(touch -> keys.add("K" + touch.substring(1)));
		return keys;
	}

	private Mechanism mechanism(List<KeyLink> links, int closedBits) {
		MovingKey[] moving = new MovingKey[keys];
		Arrays.setAll(moving, i -> new MovingKey(name(i), (closedBits >> i & 1) == 1 ? Rest.CLOSED : Rest.OPEN));
		List<FingerTouch> touches = Arrays.stream(moving)
				.map(key -> FingerTouch.moving("T" + key.name().substring(1), key.name())).toList();
		return new Mechanism(List.of(moving), Arrays.stream(moving).map(key -> CoveredHole.under(key.name())).toList(),
				touches, links);
	}

	private static String name(int key) {
		return "K" + key;
	}
}
