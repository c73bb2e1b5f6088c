package padwright.commands;

/** What the process tells its caller. */
final class ExitStatus {

	/** Done, nothing to complain of. */
	static final int CLEAN = 0;
	/** Done, with findings of error level. */
	static final int FINDINGS = 1;
	/** The arguments or the input could not be used. */
	static final int UNUSABLE = 2;
	/** The program itself is at fault; 70 is what {@code sysexits.h} calls an internal software error. */
	static final int FAULT = 70;
	/** Ended from the keyboard, as shells tell it; what Java itself then gives as the status of the process. */
	static final int STOPPED = 130;

	private ExitStatus() {
	}
}
