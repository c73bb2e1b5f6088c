package padwright.workup.compare;

import java.util.List;

/**
 * One key in two plans.
 *
 * @param label of the key
 * @param changes empty if nothing differs
 */
public record KeyComparison(String label, List<Change> changes) {

	public KeyComparison {
		changes = List.copyOf(changes);
	}
}
