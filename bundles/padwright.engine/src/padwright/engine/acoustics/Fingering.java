package padwright.engine.acoustics;

import java.util.Collection;
import java.util.HashMap;
import java.util.Map;

/**
 * How the holes are covered.
 *
 * @param covers by the names of the holes; those that are not named are open
 */
public record Fingering(Map<String, Cover> covers) {

	public Fingering {
		covers = Map.copyOf(covers);
	}

	/** These holes closed, all others open. */
	public static Fingering closing(Collection<String> holes) {
		Map<String, Cover> covers = new HashMap<>();
		holes.forEach(hole -> covers.put(hole, Cover.CLOSED));
		return new Fingering(covers);
	}

	/** The same with one hole covered otherwise. */
	public Fingering with(String hole, Cover cover) {
		Map<String, Cover> changed = new HashMap<>(covers);
		changed.put(hole, cover);
		return new Fingering(changed);
	}

	public Cover over(String hole) {
		return covers.getOrDefault(hole, Cover.OPEN);
	}
}
