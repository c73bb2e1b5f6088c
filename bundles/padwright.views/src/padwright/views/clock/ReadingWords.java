package padwright.views.clock;

import padwright.views.Figures;
import padwright.views.Messages;
import padwright.workup.solve.LeafReading;

/** A reading in words. */
final class ReadingWords {

	private ReadingWords() {
	}

	/** As in {@code 0.5}, or {@code the finest leaf drags}. */
	static String of(LeafReading reading) {
		return reading.slides().map(Figures::shown)
				.orElseGet(() -> Messages.of(reading.lightly() ? "clock.dragsLightly" : "clock.drags"));
	}
}
