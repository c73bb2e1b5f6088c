package padwright.workup.cautions;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

import padwright.workup.words.Messages;

/**
 * Hazard and precautionary statements by code, in the exact wording of the Globally Harmonised System as carried by
 * Regulation (EC) No 1272/2008 (CLP), annexes III and IV. They remind; the supplier's dated safety data sheet decides.
 */
public final class HazardStatements {

	private static final List<String> CODES = List.of("H225", "H226", "H304", "H315", "H317", "H319", "H335", "H336",
			"EUH066", "EUH202", "P210");

	private static final Pattern FORM = Pattern.compile(
			"EUH\\d{3}[A-Z]?|H[2-4]\\d{2}[A-Za-z]{0,2}(\\+H[2-4]\\d{2})*|P[1-5]\\d{2}(\\+P[1-5]\\d{2})*");

	private HazardStatements() {
	}

	/** The wording of a code, if it is one of {@link #codes()}. */
	public static Optional<String> wording(String code) {
		return CODES.contains(code) ? Optional.of(Messages.of("hazard." + code)) : Optional.empty();
	}

	/** The code with its wording; with a pointer to the data sheet where that was not checked. */
	public static String printed(String code) {
		return code + " " + wording(code).orElseGet(() -> Messages.of("hazard.seeSheet"));
	}

	/** Whether it has the form of a code of a data sheet, as in H315, H360FD, H300+H310, EUH209A or P305+P351+P338. */
	public static boolean isWellFormed(String code) {
		return FORM.matcher(code).matches();
	}

	/** The codes whose wording is known. */
	public static Collection<String> codes() {
		return CODES;
	}
}
