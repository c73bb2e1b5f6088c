package padwright.engine.seating;

import java.util.List;
import java.util.Optional;

import padwright.engine.clock.Arc;
import padwright.engine.evidence.DoubtedReading;
import padwright.engine.evidence.GapBand;
import padwright.engine.film.PartialShim;
import padwright.engine.length.Length;

/**
 * What to do under a pad, and how sure it is to help. A model: the feeler decides.
 *
 * @param place pieces to place now, in the order of the clock
 * @param takeOut earlier pieces to take out
 * @param fullShims by how much to change the full shims, zero if not at all
 * @param whyNothing the reason if nothing is to be done
 * @param chanceNow that the gap is within the seat all around already, 0 to 1
 * @param chance that it is after this, 0 to 1
 * @param gapNow where the gap lies as it is
 * @param gapAfter where it lies after this
 * @param limit what keeps the chance from being higher
 * @param next the further hour that would raise the chance most; empty if none would
 * @param doubted readings to be felt again
 * @param unread arcs of more than four hours that no round has read: what is said of them is what such rims are like
 * @param proven whether no other choice of up to two actions levels more of the sample that it was chosen by
 */
public record SeatAnswer(List<PartialShim> place, List<PartialShim> takeOut, Length fullShims,
		Optional<WhyNothing> whyNothing, double chanceNow, double chance, GapBand gapNow, GapBand gapAfter, Limit limit,
		Optional<NextHour> next, List<DoubtedReading> doubted, List<Arc> unread, boolean proven) {

	public SeatAnswer {
		place = List.copyOf(place);
		takeOut = List.copyOf(takeOut);
		doubted = List.copyOf(doubted);
		unread = List.copyOf(unread);
	}

	/** Whether no hour drags in the newest round. */
	public boolean heldOff() {
		return whyNothing.filter(WhyNothing.HELD_OFF::equals).isPresent();
	}

	/** Whether nothing is to be done. */
	public boolean nothing() {
		return whyNothing.isPresent();
	}
}
