package padwright.engine.seating;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

import padwright.engine.clock.Arc;
import padwright.engine.clock.ClockHour;
import padwright.engine.evidence.FeltReading;
import padwright.engine.evidence.FeltRound;

/** The arcs of a rim that no round has read. */
final class UnreadArcs {

	/** Half hours between two hours read, above which what lies between is not known from them. */
	private static final int WIDEST = 8;
	/** Half hours beside an hour read that it still tells of. */
	private static final int TOLD = 3;

	private UnreadArcs() {
	}

	/** Those of more than four hours, each from an hour that was read to the next. */
	static List<Arc> of(List<FeltRound> rounds) {
		List<ClockHour> read = rounds.stream().map(FeltRound::readings).flatMap(List::stream).map(FeltReading::hour)
				.distinct().sorted().toList();
		List<Arc> unread = new ArrayList<>();
		for (int i = 0; i < read.size(); i++) {
			int halfHours = read.get(i).halfHoursTo(read.get((i + 1) % read.size()));
			// From an hour to itself is all around the clock.
			int between = halfHours == 0 ? ClockHour.STATIONS - 1 : halfHours;
			if (between > WIDEST) {
				unread.add(new Arc(read.get(i), between));
			}
		}
		return unread;
	}

	/** Whether a piece would lie where nothing is known of the rim. */
	static boolean reach(List<Arc> unread, Arc piece) {
		return unread.stream().flatMap(UnreadArcs::untold)
				.anyMatch(station -> piece.quarterHoursCoveredAt(station) > 0);
	}

	private static Stream<Integer> untold(Arc unread) {
		return Stream.iterate(TOLD, later -> later <= unread.halfHours() - TOLD, later -> later + 1)
				.map(later -> unread.from().plusHalfHours(later).station());
	}
}
