package padwright.views.clock;

import java.util.List;
import java.util.Optional;

import padwright.engine.film.PartialShim;
import padwright.workup.solve.LeafReading;

/**
 * What the clock shows at one moment of its use.
 *
 * @param state the row as its text says
 * @param readings as they are typed so far
 * @param earlier pieces that are in the cup already
 * @param pieces as they are placed so far
 * @param selected the piece that is chosen, by its place, if any
 * @param entry where the next reading goes
 * @param proposal pieces that are proposed, but not applied
 */
record ClockPicture(ClockState state, List<LeafReading> readings, List<PartialShim> earlier,
		List<PartialShim> pieces, Optional<Integer> selected, ReadingEntry entry, Optional<ClockProposal> proposal) {

	public ClockPicture {
		readings = List.copyOf(readings);
		earlier = List.copyOf(earlier);
		pieces = List.copyOf(pieces);
	}

	/** Whether the readings shown are those that the gap was fitted to. */
	boolean isFitted() {
		return readings.equals(state.readings());
	}
}
