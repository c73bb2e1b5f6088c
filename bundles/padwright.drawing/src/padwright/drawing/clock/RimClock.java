package padwright.drawing.clock;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import padwright.drawing.scene.Element;
import padwright.drawing.scene.FontMetrics;
import padwright.drawing.scene.Group;
import padwright.drawing.scene.Ink;
import padwright.engine.clock.ClockHour;
import padwright.engine.evidence.GapBand;
import padwright.engine.film.PartialShim;

/**
 * The clock of one pad: readings outside, the gap as a grey band on the rim, the film inside it.
 *
 * @param words how it is to be read
 * @param atTop the hour drawn at the top
 * @param readings what the feeler said
 * @param gap where the gap lies around the clock, if there are readings to tell
 * @param earlier pieces that are in the cup already, drawn dashed
 * @param pieces pieces to place now
 * @param fullGapThou the gap that fills the band outside the rim, in thou, more than 0; wider gaps are cut off there
 */
public record RimClock(DialWords words, ClockHour atTop, List<RimReading> readings, Optional<GapBand> gap,
		List<PartialShim> earlier, List<PartialShim> pieces, double fullGapThou) {

	/** @throws IllegalArgumentException if the scale of the gap is not positive */
	public RimClock {
		readings = List.copyOf(readings);
		earlier = List.copyOf(earlier);
		pieces = List.copyOf(pieces);
		if (!(fullGapThou > 0)) {
			throw new IllegalArgumentException("a band cannot be full at a gap of " + fullGapThou + " thou");
		}
	}

	/**
	 * Where the gap is predicted to lie once the pieces do, as dashed lines over the drawing.
	 *
	 * @param diameter as of the drawing
	 */
	public Group drawPredicted(GapBand left, double diameter, Ink ink) {
		return Group.of(new GapRing(new ClockFace(diameter, atTop), left, fullGapThou).drawDashed(ink));
	}

	/**
	 * The drawing about the origin; legible from about 26 mm.
	 *
	 * @param diameter outside, mm, with all figures
	 * @throws IllegalArgumentException if the diameter is not positive
	 */
	public Group draw(double diameter, FontMetrics metrics) {
		ClockFace face = new ClockFace(diameter, atTop);
		List<Element> elements = new ArrayList<>();
		gap.ifPresent(band -> elements.addAll(new GapRing(face, band, fullGapThou).draw()));
		elements.addAll(new DialDrawing(face, metrics, words).draw());
		elements.addAll(new PieceRings(face, metrics, words, earlier, pieces).draw());
		elements.addAll(new ReadingMarks(face, metrics, words, readings).draw());
		return Group.of(elements);
	}
}
