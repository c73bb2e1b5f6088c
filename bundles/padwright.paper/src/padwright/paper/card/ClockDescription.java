package padwright.paper.card;

import java.util.ArrayList;
import java.util.List;

import padwright.drawing.clock.RimReading;
import padwright.paper.words.Messages;
import padwright.workup.words.PieceWords;

/** What the clock of a key shows, for whoever cannot see it. */
final class ClockDescription {

	private ClockDescription() {
	}

	/** As in {@code Clock of F♯. Readings: 12 drags, 3 0.5. In the cup: nothing. To place: 0.5 from 2 to 4.} */
	static String of(CardKey key) {
		List<String> parts = new ArrayList<>();
		parts.add(Messages.of("card.clock", key.label()));
		parts.add(Messages.of("card.readings") + " " + list(key.readings().stream().map(ClockDescription::reading).toList()));
		parts.add(Messages.of("card.inCupNow") + " " + list(key.earlierPieces().stream().map(PieceWords::of).toList()));
		key.work().filter(work -> !work.takeOut().isEmpty()).ifPresent(work -> parts
				.add(Messages.of("card.toTakeOut") + " " + list(work.takeOut().stream().map(PieceWords::of).toList())));
		parts.add(Messages.of("card.toPlace") + " " + list(key.pieces().stream().map(PieceWords::of).toList()));
		return String.join(". ", parts) + ".";
	}

	private static String reading(RimReading reading) {
		if (reading.drags()) {
			return Messages.of("card.at.drags", reading.at());
		}
		return reading.text().isEmpty() ? Messages.of("card.at.toRead", reading.at())
				: Messages.of("card.at", reading.at(), reading.text());
	}

	private static String list(List<String> things) {
		return things.isEmpty() ? Messages.of("card.nothing") : String.join(", ", things);
	}
}
