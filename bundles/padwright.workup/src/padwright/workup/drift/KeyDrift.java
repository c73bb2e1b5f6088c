package padwright.workup.drift;

import java.util.List;
import java.util.Optional;

import padwright.engine.closing.Hinge;
import padwright.engine.drift.Drift;
import padwright.engine.drift.DriftVerdict;
import padwright.engine.drift.HeightChange;
import padwright.engine.length.Length;

/**
 * What another climate does in one cup.
 *
 * @param key name of the key
 * @param known the drift of all that is known; empty where no layer is
 * @param unknown what is not in it for want of data
 * @param hinge that the key turns on
 */
public record KeyDrift(String key, Optional<Drift> known, List<UnknownLayer> unknown, Hinge hinge) {

	public KeyDrift {
		unknown = List.copyOf(unknown);
	}

	/** Whether all layers and constants are known. */
	public boolean complete() {
		return known.isPresent() && unknown.isEmpty();
	}

	/** How wide the gap may become by what is known, at its widest, of a pad that lay level. */
	public Optional<HeightChange> opened() {
		return known.map(drift -> drift.total().opened(hinge));
	}

	/** The verdict on what is known, which decides only if that is {@linkplain #complete all}. */
	public Optional<DriftVerdict> verdictOfKnown(Length tolerance) {
		return known.map(drift -> drift.against(tolerance, hinge));
	}
}
