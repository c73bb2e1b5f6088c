package padwright.workup.history;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * One pad of a key over the years; a new pad has a history of its own.
 *
 * @param label    of the key
 * @param services in how many plans the key has a row while this pad was in it; none for one that was found torn at first
 * @param fitted   day on which it went in; empty for one that was in before any plan
 * @param torn     day on which it was found torn
 * @param moved    how it moved from one service with readings, the last as delivered, to the next
 * @param trend    of the widest gap it is found with; empty where that was felt at fewer than three services, or goes nowhere
 */
public record KeyHistory(String label, int services, Optional<LocalDate> fitted, Optional<LocalDate> torn, List<Movement> moved,
		Optional<Trend> trend) {

	public KeyHistory {
		moved = List.copyOf(moved);
	}

	/** Of a pad that was in the key before any plan, and was found torn. */
	static KeyHistory tornBefore(String label, LocalDate found) {
		return new KeyHistory(label, 0, Optional.empty(), Optional.of(found), List.of(), Optional.empty());
	}
}
