package padwright.workup.cautions;

import java.util.Collection;
import java.util.List;
import java.util.Optional;

import padwright.workup.words.Messages;

/**
 * Hazard and precautionary statements by code, in the exact wording of the Globally Harmonised System as carried by
 * Regulation (EC) No 1272/2008 (CLP), annexes III and IV. They remind; the supplier's dated safety data sheet decides.
 */
public final class HazardStatements {

	private static final List<String> CODES = List.of("H225", "H226", "H304", "H315", "H317", "H319", "H335", "H336",
			"EUH066", "EUH202", "P210");

	private HazardStatements() {
	}

	/** The wording of a code, if it is one of {@link #codes()}. */
	public static Optional<String> wording(String code) {
		return CODES.contains(code) ? Optional.of(Messages.of("hazard." + code)) : Optional.empty();
	}

	public static Collection<String> codes() {
		return CODES;
	}
}
