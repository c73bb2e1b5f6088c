package padwright.engine.drift;

/** A change of height that is known as an interval, held against a tolerance. */
public enum DriftVerdict {
	/** Whatever the materials are within their ranges, the tolerance holds. */
	SURELY_WITHIN,
	/** The tolerance holds for some of the material constants only. */
	MAY_EXCEED,
	/** Whatever the materials are within their ranges, the tolerance does not hold. */
	SURELY_EXCEEDS
}
