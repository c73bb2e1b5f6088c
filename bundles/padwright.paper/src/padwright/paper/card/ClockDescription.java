package padwright.paper.card;

import java.util.ArrayList;
import java.util.List;

import padwright.drawing.clock.RimReading;
import padwright.engine.film.PartialShim;

/** What the clock of a key shows, for whoever cannot see it. */
final class ClockDescription {

	private ClockDescription() {
	}

	/** As in {@code Clock of F♯. Readings: 12 drags, 3 0.5. In the cup: nothing. To place: 0.5 thou from 2 to 4.} */
	static String of(CardKey key) {
		List<String> parts = new ArrayList<>();
		parts.add("Clock of " + key.label());
		parts.add("Readings: " + list(key.readings().stream().map(ClockDescription::reading).toList()));
		parts.add("In the cup: " + list(key.earlierPieces().stream().map(PartialShim::toString).toList()));
		key.work().filter(work -> !work.takeOut().isEmpty()).ifPresent(work -> parts
				.add("To take out: " + list(work.takeOut().stream().map(PartialShim::toString).toList())));
		parts.add("To place: " + list(key.pieces().stream().map(PartialShim::toString).toList()));
		return String.join(". ", parts) + ".";
	}

	private static String list(List<String> things) {
		return things.isEmpty() ? "nothing" : String.join(", ", things);
	}

	private static String reading(RimReading reading) {
		return reading.at() + " " + (reading.text().isEmpty() ? "to be felt" : reading.text());
	}
}
