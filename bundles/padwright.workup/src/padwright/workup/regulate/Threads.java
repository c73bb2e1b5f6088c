package padwright.workup.regulate;

import java.util.Optional;

import padwright.engine.coupling.ScrewThread;

/** Screw threads as key systems name them. */
final class Threads {

	private Threads() {
	}

	/** The thread of a designation such as {@code UNM 1.00} or {@code 8 BA}, if there is one. */
	static Optional<ScrewThread> named(String designation) {
		try {
			return Optional.of(ScrewThread.of(designation));
		} catch (IllegalArgumentException noSuchThread) {
			return Optional.empty();
		}
	}
}
