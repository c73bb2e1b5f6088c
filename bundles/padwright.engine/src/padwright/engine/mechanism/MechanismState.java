package padwright.engine.mechanism;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * A mechanism while some touches are pressed. All in the order of the mechanism.
 *
 * @param moved the keys away from their rest, each with what moves it, from the finger on
 * @param holes every hole; under a key of which a contradiction tells, as at its rest
 * @param clashes the keys that are wanted in both states
 */
public record MechanismState(Map<String, List<Cause>> moved, Map<String, HoleState> holes, List<Clash> clashes) {

	public MechanismState {
		moved = Collections.unmodifiableMap(new LinkedHashMap<>(moved));
		holes = Collections.unmodifiableMap(new LinkedHashMap<>(holes));
		clashes = List.copyOf(clashes);
	}

	/** What the mechanism cannot do. */
	public List<Clash> contradictions() {
		return clashes.stream().filter(clash -> clash.kind() != Clash.Kind.HELD).toList();
	}

	/** The keys that something would open while another keeps them shut. */
	public List<Clash> held() {
		return clashes.stream().filter(clash -> clash.kind() == Clash.Kind.HELD).toList();
	}

	/** The holes in one state. */
	public Set<String> holes(HoleState state) {
		Set<String> found = new LinkedHashSet<>();
		holes.forEach((hole, is) -> {
			if (is == state) {
				found.add(hole);
			}
		});
		return found;
	}

	/** The holes that are not closed: open or half open. */
	public Set<String> sounding() {
		Set<String> found = new LinkedHashSet<>(holes.keySet());
		found.removeAll(holes(HoleState.CLOSED));
		return found;
	}
}
