package padwright.workup.drift;

import java.util.List;
import java.util.Optional;

import padwright.engine.drift.Drift;
import padwright.engine.drift.DriftVerdict;
import padwright.engine.length.Length;

/**
 * What another climate does in one cup.
 *
 * @param key name of the key
 * @param known the drift of all that is known; empty where no layer is
 * @param unknown what is not in it for want of data
 */
public record KeyDrift(String key, Optional<Drift> known, List<UnknownLayer> unknown) {

	public KeyDrift {
		unknown = List.copyOf(unknown);
	}

	/** Whether all layers and constants are known. */
	public boolean complete() {
		return known.isPresent() && unknown.isEmpty();
	}

	/** The verdict on what is known, which decides only if that is {@linkplain #complete all}. */
	public Optional<DriftVerdict> verdictOfKnown(Length tolerance) {
		return known.map(drift -> drift.against(tolerance));
	}
}
