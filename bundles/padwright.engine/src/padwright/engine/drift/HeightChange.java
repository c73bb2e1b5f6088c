package padwright.engine.drift;

import java.math.BigDecimal;
import java.math.RoundingMode;

import padwright.engine.clock.ClockHour;
import padwright.engine.closing.Hinge;
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

	/**
	 * How wide the gap under a pad that lay level becomes, at its widest: the key turns on its hinge until the face touches, so
	 * that one that grew touches at the hinge and stays open opposite, and one that shrank the other way round. With w the
	 * {@link Hinge#weight} at either end, a growth by d opens d · (w far / w near − 1), a shrinking by d opens
	 * d · (1 − w near / w far). Derived here from the geometry of a turning lever.
	 */
	public HeightChange opened(Hinge hinge) {
		long least = low.signum() > 0 ? opened(low, hinge) : high.signum() < 0 ? opened(high, hinge) : 0;
		return new HeightChange(new Length(least),
				new Length(Math.max(opened(low, hinge), opened(high, hinge))));
	}

	private static long opened(Length change, Hinge hinge) {
		double near = hinge.weight(hinge.side().station());
		double far = hinge.weight(hinge.side().station() + ClockHour.STATIONS / 2);
		double share = change.signum() > 0 ? far / near - 1 : 1 - near / far;
		return Math.round(share * Math.abs(change.nanometres()));
	}

	/** How the change, of either sign, compares with a tolerance. */
	public DriftVerdict against(Length tolerance) {
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
