package padwright.engine.calibration;

import java.util.List;

import padwright.engine.film.PartialShim;
import padwright.engine.rim.RimReading;

/**
 * One round at the bench: readings, pieces placed, readings again with nothing else changed.
 *
 * @param before gaps without the pieces
 * @param pieces what was placed behind the pad, at least one
 * @param after gaps with the pieces; at least one hour read both times
 */
public record CalibrationRound(List<RimReading> before, List<PartialShim> pieces, List<RimReading> after) {

	/** @throws IllegalArgumentException if no piece was placed or no hour was read both times */
	public CalibrationRound {
		before = List.copyOf(before);
		pieces = List.copyOf(pieces);
		after = List.copyOf(after);
		if (pieces.isEmpty()) {
			throw new IllegalArgumentException("a round without a piece tells nothing about stiffness");
		}
		if (!haveAnHour(before, after)) {
			throw new IllegalArgumentException("no hour was read both before and after the pieces were placed");
		}
	}

	/** Whether any hour was read both times. */
	public static boolean haveAnHour(List<RimReading> before, List<RimReading> after) {
		return after.stream().anyMatch(second -> before.stream().anyMatch(read -> read.hour().equals(second.hour())));
	}
}
