package padwright.workup.inspection;

/** What is said of play wherever it is found; common practice, no source. */
final class MechanismWords {

	static final String TAKE_UP = "Take the play up before a pad is felt, with a washer or by closing the tube";
	static final String WHY_TAKE_UP = "a key that moves on its rod seats elsewhere each time, and film cannot follow it";

	private MechanismWords() {
	}
}
