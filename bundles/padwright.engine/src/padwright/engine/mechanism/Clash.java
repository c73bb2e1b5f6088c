package padwright.engine.mechanism;

import java.util.List;
import java.util.stream.Collectors;

/**
 * A key that is wanted in both states at once.
 *
 * @param kind how it ends
 * @param key the key
 * @param moving what moves the key, from the finger on; in a circle each link of it
 * @param opposing what brings it back, from the finger on; empty in a circle
 */
public record Clash(Kind kind, String key, List<Cause> moving, List<Cause> opposing) {

	/** How it ends. */
	public enum Kind {
		/** The key stays shut, since another holds it: nothing is wrong. */
		HELD,
		/** A contradiction: the key is opened and closed, and nothing tells which is stronger. */
		OPPOSED,
		/** A contradiction: the key moves only if it does not move. */
		CIRCULAR
	}

	public Clash {
		moving = List.copyOf(moving);
		opposing = List.copyOf(opposing);
	}

	/** As in {@code Gs: L4 presses Gs; but R1 presses F, F holds Gs}. */
	@Override
	public String toString() {
		return key + ": " + inWords(moving) + (opposing.isEmpty() ? "" : "; but " + inWords(opposing));
	}

	private static String inWords(List<Cause> chain) {
		return chain.stream().map(Cause::toString).collect(Collectors.joining(", "));
	}
}
