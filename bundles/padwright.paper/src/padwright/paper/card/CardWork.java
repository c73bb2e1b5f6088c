package padwright.paper.card;

import java.util.List;

import padwright.engine.film.PartialShim;

/**
 * What is to be done in a cup after the readings.
 *
 * @param fullShims by how much the full shims are changed, as in {@code +0.5}; empty if not at all
 * @param takeOut pieces in the cup that come out
 * @param place pieces that go in
 */
public record CardWork(String fullShims, List<PartialShim> takeOut, List<PartialShim> place) {

	public CardWork {
		takeOut = List.copyOf(takeOut);
		place = List.copyOf(place);
	}

	boolean isNothing() {
		return fullShims.isEmpty() && takeOut.isEmpty() && place.isEmpty();
	}
}
