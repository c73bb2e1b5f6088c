package padwright.workup.drift;

import java.util.ArrayList;
import java.util.List;

import padwright.engine.drift.Climate;
import padwright.engine.drift.MaterialRange;
import padwright.model.Range;
import padwright.model.stock.Material;
import padwright.workup.words.Phrase;

/** Which constants of a material the way from one climate to another asks for: none that multiplies no difference. */
record ClimateChange(Climate bench, Climate home) {

	private static final MaterialRange NOTHING = MaterialRange.exactly("0");

	/** The constants that are asked for and that the stock does not say. */
	List<Phrase> missing(Material material) {
		List<Phrase> missing = new ArrayList<>();
		if (warms() && !isKnown(material.getExpands())) {
			missing.add(Phrase.of("drift.expansion"));
		}
		if (wets() && !isKnown(material.getSwells())) {
			missing.add(Phrase.of("drift.swelling"));
		}
		return missing;
	}

	/** Whether at least a part of its change is known. */
	boolean tells(Material material) {
		boolean asksForNothing = !warms() && !wets();
		return asksForNothing || warms() && isKnown(material.getExpands()) || wets() && isKnown(material.getSwells());
	}

	/** Nothing where it is not known. */
	static MaterialRange expansion(Material material) {
		return range(material.getExpands());
	}

	/** Nothing where it is not known. */
	static MaterialRange swelling(Material material) {
		return range(material.getSwells());
	}

	private boolean warms() {
		return bench.celsius().compareTo(home.celsius()) != 0;
	}

	private boolean wets() {
		return bench.relativeHumidity().compareTo(home.relativeHumidity()) != 0;
	}

	private static boolean isKnown(Range range) {
		return range != null && !range.isEmpty();
	}

	private static MaterialRange range(Range range) {
		return isKnown(range) ? new MaterialRange(range.low(), range.high()) : NOTHING;
	}
}
