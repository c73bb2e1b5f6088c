package padwright.engine.bench;

import java.util.List;
import java.util.Optional;

import padwright.engine.clock.ClockHour;
import padwright.engine.evidence.FeltRound;
import padwright.engine.film.PartialShim;
import padwright.engine.length.Length;

/** Says what to do under a pad after it was felt. */
public interface Adviser {

	/**
	 * What to do.
	 *
	 * @param chanceNow that it is level already, 0 to 1
	 * @param chance that it is after this
	 * @param next a further hour to be felt first
	 */
	record Advice(List<PartialShim> place, List<PartialShim> takeOut, Length fullShims, boolean heldOff, double chanceNow,
			double chance, Optional<ClockHour> next) {

		boolean isNothing() {
			return place.isEmpty() && takeOut.isEmpty() && fullShims.signum() == 0;
		}
	}

	/** @param rounds all so far, the newest last, felt over the film that is in place now */
	Advice advise(List<FeltRound> rounds);
}
