package padwright.workup.cautions;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * Hazard and precautionary statements by code, in the exact wording of the Globally Harmonised System as carried by
 * Regulation (EC) No 1272/2008 (CLP), annexes III and IV. They remind; the supplier's dated safety data sheet decides.
 */
public final class HazardStatements {

	private static final Map<String, String> BY_CODE = new LinkedHashMap<>();

	static {
		BY_CODE.put("H225", "Highly flammable liquid and vapour.");
		BY_CODE.put("H226", "Flammable liquid and vapour.");
		BY_CODE.put("H304", "May be fatal if swallowed and enters airways.");
		BY_CODE.put("H315", "Causes skin irritation.");
		BY_CODE.put("H317", "May cause an allergic skin reaction.");
		BY_CODE.put("H319", "Causes serious eye irritation.");
		BY_CODE.put("H335", "May cause respiratory irritation.");
		BY_CODE.put("H336", "May cause drowsiness or dizziness.");
		BY_CODE.put("EUH066", "Repeated exposure may cause skin dryness or cracking.");
		BY_CODE.put("EUH202", "Cyanoacrylate. Danger. Bonds skin and eyes in seconds. Keep out of the reach of children.");
		BY_CODE.put("P210", "Keep away from heat, hot surfaces, sparks, open flames and other ignition sources. No smoking.");
	}

	private HazardStatements() {
	}

	/** The wording of a code, if it is one of {@link #codes()}. */
	public static Optional<String> wording(String code) {
		return Optional.ofNullable(BY_CODE.get(code));
	}

	public static Collection<String> codes() {
		return BY_CODE.keySet();
	}
}
