package padwright.engine.drift;

import java.math.BigDecimal;
import java.math.RoundingMode;

import padwright.engine.length.Length;

/**
 * A change of height that is known to lie between two lengths; positive grows toward the rim.
 *
 * @param low the least it may be
 * @param high the most it may be, not below {@code low}
 */
public record HeightChange(Length low, Length high) {

	/** @throws IllegalArgumentException if {@code low} is above {@code high} */
	public HeightChange {
		if (low.isLongerThan(high)) {
			throw new IllegalArgumentException("a change cannot run from " + low + " down to " + high);
		}
	}

	/** Rounded outward to whole nanometres, so that the true change is surely inside. */
	static HeightChange outward(MaterialRange nanometres) {
		return new HeightChange(rounded(nanometres.low(), RoundingMode.FLOOR),
				rounded(nanometres.high(), RoundingMode.CEILING));
	}

	/** How the change, of either sign, compares with a tolerance. */
	DriftVerdict against(Length tolerance) {
		if (!low.negated().isLongerThan(tolerance) && !high.isLongerThan(tolerance)) {
			return DriftVerdict.SURELY_WITHIN;
		}
		boolean beyond = low.isLongerThan(tolerance) || high.negated().isLongerThan(tolerance);
		return beyond ? DriftVerdict.SURELY_EXCEEDS : DriftVerdict.MAY_EXCEED;
	}

	private static Length rounded(BigDecimal nanometres, RoundingMode mode) {
		return new Length(nanometres.setScale(0, mode).longValueExact());
	}
}
