package padwright.engine.mechanism;

import java.util.List;

/**
 * A tone hole and what covers it.
 *
 * @param name unlike that of any other hole
 * @param cups the cups over it; none for a hole that only a finger covers
 */
public record CoveredHole(String name, List<HoleCup> cups) {

	/** @throws IllegalArgumentException if the name is blank */
	public CoveredHole {
		cups = List.copyOf(cups);
		if (name.isBlank()) {
			throw new IllegalArgumentException("a hole needs a name");
		}
	}

	/** A hole for a finger alone. */
	public static CoveredHole fingerHole(String name) {
		return new CoveredHole(name, List.of());
	}

	/** A hole under the plain cup of a key of the same name. */
	public static CoveredHole under(String key) {
		return new CoveredHole(key, List.of(HoleCup.plain(key)));
	}
}
