package padwright.workup.history;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * One key of an instrument over the years.
 *
 * @param label    of the key
 * @param services in how many plans it has a row
 * @param fitted   days on which a new pad went in, oldest first
 * @param torn     days on which the pad was found torn
 * @param moved    how the pad in the cup moved from one service with readings, the last as delivered, to the next
 * @param trend    of the spread it is found with; empty where that was felt at fewer than three services
 */
public record KeyHistory(String label, int services, List<LocalDate> fitted, List<LocalDate> torn, List<Movement> moved,
		Optional<Trend> trend) {

	public KeyHistory {
		fitted = List.copyOf(fitted);
		torn = List.copyOf(torn);
		moved = List.copyOf(moved);
	}
}
