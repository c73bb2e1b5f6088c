package padwright.drawing.clock;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import padwright.drawing.scene.Element;
import padwright.drawing.scene.FontMetrics;
import padwright.drawing.scene.Group;
import padwright.drawing.scene.Ink;
import padwright.engine.clock.ClockHour;
import padwright.engine.film.PartialShim;
import padwright.engine.rim.RimProfile;

/**
 * The clock of one pad: readings outside, the gap as a grey bulge on the rim, the film inside it.
 *
 * @param words how it is to be read
 * @param atTop the hour drawn at the top
 * @param readings what the feeler said
 * @param gap the fitted gap around the clock, if there are readings to fit
 * @param earlier pieces that are in the cup already, drawn dashed
 * @param pieces pieces to place now
 * @param fullGapThou the gap that fills the band outside the rim, in thou, more than 0; wider gaps are cut off there
 */
public record RimClock(DialWords words, ClockHour atTop, List<RimReading> readings, Optional<RimProfile> gap,
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
	 * What is predicted to stay of the gap once the pieces lie, as a dashed line over the drawing.
	 *
	 * @param diameter as of the drawing
	 */
	public Element drawPredicted(RimProfile left, double diameter, Ink ink) {
		return new GapBand(new ClockFace(diameter, atTop), left, fullGapThou).drawDashed(ink);
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
		gap.ifPresent(profile -> elements.addAll(new GapBand(face, profile, fullGapThou).draw()));
		elements.addAll(new DialDrawing(face, metrics, words).draw());
		elements.addAll(new PieceRings(face, metrics, earlier, pieces).draw());
		elements.addAll(new ReadingMarks(face, metrics, readings).draw());
		return Group.of(elements);
	}
}
