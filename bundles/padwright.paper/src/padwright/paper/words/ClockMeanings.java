package padwright.paper.words;

import padwright.drawing.clock.DialWords;
import padwright.drawing.clock.RimReading;
import padwright.engine.film.PartialShim;
import padwright.workup.words.LengthWords;
import padwright.workup.words.PieceWords;
import padwright.workup.words.ShownUnit;

/** What is drawn in a clock, for whoever points at it or cannot see it. */
public final class ClockMeanings implements DialWords.Meanings {

	@Override
	public String reading(RimReading reading) {
		if (reading.drags()) {
			return Messages.of("clock.drags", reading.at());
		}
		return reading.text().isEmpty() ? Messages.of("clock.toRead", reading.at())
				: reading.equals(RimReading.lightDrag(reading.at())) ? Messages.of("clock.dragsLightly", reading.at())
						: Messages.of("clock.slides", reading.text(), ShownUnit.symbol(), reading.at());
	}

	@Override
	public String thickness(PartialShim piece) {
		return LengthWords.figure(piece.thickness());
	}

	@Override
	public String piece(PartialShim piece, boolean earlier) {
		return earlier ? Messages.of("clock.inCup", PieceWords.of(piece)) : PieceWords.of(piece);
	}
}
