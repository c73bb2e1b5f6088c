package padwright.drawing.clock;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.IntStream;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

import padwright.drawing.font.DejaVuMetrics;
import padwright.drawing.scene.Bounds;
import padwright.drawing.scene.Face;
import padwright.drawing.scene.FontMetrics;
import padwright.engine.clock.Arc;
import padwright.engine.clock.ClockHour;
import padwright.engine.film.PartialShim;
import padwright.engine.length.Length;

class PieceLabelTest {

	/** Two millimetres a unit. */
	private static final ClockFace FACE = new ClockFace(52, new ClockHour(0));
	private static final double RADIUS = 5.5;
	private static final double ROUNDING = 1e-9;
	private static final int LENGTH = 10;
	/** Enough for two labels beside each other. */
	private static final int LONG = 14;

	private final DejaVuMetrics metrics = new DejaVuMetrics();

	static IntStream stations() {
		return IntStream.range(0, ClockHour.STATIONS);
	}

	private PieceLabel label(int from, int halfHours, List<Bounds> others) {
		PartialShim piece = new PartialShim(new Arc(new ClockHour(from), halfHours), Length.thou("1.5"));
		return PieceLabel.place(FACE, metrics, PlainWords.HINGE, piece, RADIUS, 2.4, others);
	}

	@ParameterizedTest
	@MethodSource("stations")
	void aloneItStandsInTheMiddleOfItsPieceWithinTheRim(int from) {
		Bounds plate = label(from, LENGTH, List.of()).plate();
		assertEquals(0, Math.IEEEremainder(FACE.angle(from + LENGTH / 2.0) - direction(plate), 2 * Math.PI), ROUNDING);
		double out = Math.hypot(plate.centreX(), plate.centreY());
		double farthest = Math.hypot(Math.abs(plate.centreX()) + plate.width() / 2,
				Math.abs(plate.centreY()) + plate.height() / 2);
		assertTrue(out <= FACE.mm(RADIUS) + ROUNDING, "middle " + out);
		assertTrue(out > FACE.mm(RADIUS) - FACE.mm(1), "drawn in no farther than it must: " + out);
		assertTrue(farthest < FACE.mm(ClockFace.RIM), "corner " + farthest);
	}

	private static double direction(Bounds plate) {
		return Math.atan2(plate.centreX(), -plate.centreY());
	}

	@ParameterizedTest
	@MethodSource("stations")
	void itsPlateHasRoomForItsText(int from) {
		for (int halfHours : new int[] { 2, LENGTH }) {
			PieceLabel label = label(from, halfHours, List.of());
			double text = metrics.width(label.text(), Face.CONDENSED_BOLD, label.size());
			assertEquals(text + FACE.mm(0.36), label.plate().width(), ROUNDING);
			assertEquals(label.size() * FontMetrics.CAPITAL_HEIGHT + FACE.mm(0.36), label.plate().height(), ROUNDING);
			assertTrue(label.size() >= FACE.mm(1.5) - ROUNDING && label.size() <= FACE.mm(2.1) + ROUNDING);
		}
	}

	@ParameterizedTest
	@MethodSource("stations")
	void itMovesAlongItsPieceOutOfTheWayOfAnother(int from) {
		Bounds taken = label(from, LONG, List.of()).plate();
		Bounds moved = label(from, LONG, List.of(taken)).plate();
		assertFalse(moved.overlaps(taken), moved + " " + taken);
		double along = Math.IEEEremainder(direction(moved) - FACE.angle(from + LONG / 2.0), 2 * Math.PI);
		assertTrue(Math.abs(along) < LONG / 2.0 * 2 * Math.PI / ClockHour.STATIONS, "off the piece by " + along);
	}

	@ParameterizedTest
	@MethodSource("stations")
	void whereNothingIsFreeItStandsInTheMiddle(int from) {
		Bounds everywhere = new Bounds(-100, -100, 200, 200);
		assertEquals(label(from, LENGTH, List.of()), label(from, LENGTH, List.of(everywhere)));
	}
}
