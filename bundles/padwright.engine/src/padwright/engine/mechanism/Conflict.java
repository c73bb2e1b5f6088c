package padwright.engine.mechanism;

import java.util.List;
import java.util.stream.Collectors;

/**
 * What a mechanism cannot do.
 *
 * @param kind what is wrong
 * @param key the key that it is wrong with
 * @param moving what moves the key, from the finger on; in a circle each link of it
 * @param opposing what brings it back, from the finger on; empty in a circle
 */
public record Conflict(Kind kind, String key, List<Cause> moving, List<Cause> opposing) {

	/** The ways in which it can go wrong. */
	public enum Kind {
		/** One thing opens the key while another closes it. */
		OPPOSED,
		/** A finger presses a key that another keeps shut. */
		HELD,
		/** Whether the key moves depends on whether it is kept from moving by what it moves itself. */
		CIRCULAR
	}

	public Conflict {
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
