package padwright.engine.fingering;

import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

import padwright.engine.coupling.CouplingGraph;

/**
 * What the keys of an instrument do when some are pressed.
 *
 * @param postures how every key stands at rest
 * @param couplings the same keys and which closes which
 */
public record KeyAction(Map<String, RestPosture> postures, CouplingGraph couplings) {

	/** @throws IllegalArgumentException if the two do not name the same keys */
	public KeyAction {
		postures = Map.copyOf(postures);
		couplings.requireKnown(postures.keySet());
		if (postures.size() < couplings.keys().size()) {
			throw new IllegalArgumentException("every key needs a posture at rest: " + postures.size() + " of "
					+ couplings.keys().size() + " have one");
		}
	}

	/**
	 * The pads that are closed while these keys are pressed, in the order of the keys. A pressed key that stands open
	 * closes, with all keys it drives, through chains too; a pressed key that stands closed opens. A key that stands
	 * closed passes nothing on: it does not go down.
	 *
	 * @throws IllegalArgumentException if a key is unknown
	 */
	public Set<String> closedPads(Collection<String> pressed) {
		Set<String> down = Set.copyOf(pressed);
		couplings.requireKnown(down);
		Set<String> closing = closing(down);
		return couplings.keys().stream()
				.filter(key -> isOpen(key) ? closing.contains(key) : !down.contains(key))
				.collect(Collectors.toCollection(LinkedHashSet::new));
	}

	private Set<String> closing(Set<String> down) {
		Set<String> closing = new HashSet<>();
		down.forEach(key -> close(key, closing));
		return closing;
	}

	private void close(String key, Set<String> closing) {
		if (isOpen(key) && closing.add(key)) {
			couplings.couplingsOf(key).forEach(coupling -> close(coupling.driven(), closing));
		}
	}

	private boolean isOpen(String key) {
		return postures.get(key) == RestPosture.OPEN;
	}
}
