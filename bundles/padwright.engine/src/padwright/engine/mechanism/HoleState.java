package padwright.engine.mechanism;

/**
 * How far a hole is open: {@code HALF} where a finger covers it in part, or where a perforated cup is down and no
 * finger closes its opening.
 */
public enum HoleState {
	OPEN, HALF, CLOSED
}
