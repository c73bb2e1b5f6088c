package padwright.workup.compare;

import java.util.List;

/**
 * One key in two plans.
 *
 * @param name of the key in the plans
 * @param label of the key, as the trade calls it
 * @param changes empty if nothing differs
 */
public record KeyComparison(String name, String label, List<Change> changes) {

	public KeyComparison {
		changes = List.copyOf(changes);
	}
}
