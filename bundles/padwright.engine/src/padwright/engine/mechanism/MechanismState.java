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
 * @param held the keys that something would open while another keeps them shut, each with what keeps it, from the
 *     finger on
 * @param holes every hole; under a key of which a conflict tells, as at its rest
 * @param conflicts what the mechanism cannot do
 */
public record MechanismState(Map<String, List<Cause>> moved, Map<String, List<Cause>> held,
		Map<String, HoleState> holes, List<Conflict> conflicts) {

	public MechanismState {
		moved = Collections.unmodifiableMap(new LinkedHashMap<>(moved));
		held = Collections.unmodifiableMap(new LinkedHashMap<>(held));
		holes = Collections.unmodifiableMap(new LinkedHashMap<>(holes));
		conflicts = List.copyOf(conflicts);
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
