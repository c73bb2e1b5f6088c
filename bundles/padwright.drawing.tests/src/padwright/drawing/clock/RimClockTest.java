package padwright.drawing.clock;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.LongStream;

import org.junit.jupiter.api.Test;

import padwright.drawing.Raster;
import padwright.drawing.TextBoxes;
import padwright.drawing.font.DejaVuMetrics;
import padwright.drawing.java2d.Hits;
import padwright.drawing.scene.Bounds;
import padwright.drawing.scene.Drawn;
import padwright.drawing.scene.Element;
import padwright.drawing.scene.Group;
import padwright.drawing.scene.Ink;
import padwright.drawing.scene.Rectangle;
import padwright.drawing.scene.Scene;
import padwright.drawing.scene.Stroke;
import padwright.drawing.scene.Style;
import padwright.drawing.scene.Transform;
import padwright.engine.clock.Arc;
import padwright.engine.clock.ClockHour;
import padwright.engine.evidence.GapBand;
import padwright.engine.film.PartialShim;
import padwright.engine.length.Length;
import padwright.engine.rim.RimProfile;

class RimClockTest {

	private static final ClockHour TWELVE = new ClockHour(0);

	private final DejaVuMetrics metrics = new DejaVuMetrics();

	@Test
	void everyWordOfAFullClockOf26MillimetresStaysInsideIt() {
		Group clock = full(TWELVE).draw(26, metrics);
		List<Bounds> boxes = TextBoxes.of(List.of(clock), metrics);
		assertTrue(boxes.size() >= 12 + 3 + 2, boxes.size() + " texts");
		for (Bounds box : boxes) {
			assertTrue(box.left() >= -13 && box.right() <= 13, box.toString());
			assertTrue(box.top() >= -13 && box.bottom() <= 13, box.toString());
		}
	}

	@Test
	void readingsDoNotRunIntoOneAnother() {
		List<RimReading> readings = IntStream.range(0, 12)
				.mapToObj(hour -> RimReading.free(new ClockHour(2 * hour), "1.5")).toList();
		RimClock clock = new RimClock(PlainWords.HINGE, TWELVE, readings, Optional.empty(), List.of(), List.of(), 2);
		List<Bounds> boxes = TextBoxes.of(List.of(clock.draw(26, metrics)), metrics).stream()
				.filter(box -> box.height() > 1.5).toList();
		for (Bounds box : boxes) {
			assertEquals(1, boxes.stream().filter(box::overlaps).count(), box.toString());
		}
	}

	/** Turning the hour at the top by three turns what is drawn a quarter against the clock. */
	@Test
	void theWholeDialTurnsWithTheHourAtTheTop() {
		BufferedImage turned = Raster.paint(30, 30, bare(new ClockHour(6)).at(15, 15));
		Group quarter = new Group(Optional.empty(), Optional.empty(),
				new Transform(0, -1, 1, 0, 15, 15), List.of(bare(TWELVE)));
		BufferedImage expected = Raster.paint(30, 30, quarter);
		assertEquals(0, difference(turned, expected), 0.002);
		assertTrue(difference(turned, Raster.paint(30, 30, bare(TWELVE).at(15, 15))) > 0.01);
	}

	/** The gap alone: it has no text, which would not turn. */
	private Group bare(ClockHour top) {
		return Group.of(new GapRing(new ClockFace(26, top), bulgeAt(5), 2).draw());
	}

	private static double difference(BufferedImage one, BufferedImage other) {
		int[] a = one.getRaster().getPixels(0, 0, one.getWidth(), one.getHeight(), (int[]) null);
		int[] b = other.getRaster().getPixels(0, 0, one.getWidth(), one.getHeight(), (int[]) null);
		return IntStream.range(0, a.length).mapToDouble(i -> Math.abs(a[i] - b[i]) / 255.0).average().orElseThrow();
	}

	/** Two thou fill the band, one thou half of it, and no gap is drawn wider than the band. */
	@Test
	void theGapIsDrawnToScaleAndCutOffAtTheEdgeOfTheBand() {
		double band = ClockFace.BAND_OUTER - ClockFace.RIM;
		assertEquals(ClockFace.RIM + band / 2, reachOfGap(1), 0.02);
		assertEquals(ClockFace.BAND_OUTER, reachOfGap(2), 0.02);
		assertEquals(ClockFace.BAND_OUTER, reachOfGap(5), 0.02);
		assertEquals(ClockFace.RIM, reachOfGap(-1), 0.02);
	}

	private static double reachOfGap(int thou) {
		RimProfile even = RimProfile.ofNanometres(LongStream.generate(() -> thou * 25_400L).limit(24).toArray());
		return new GapRing(new ClockFace(26, TWELVE), new GapBand(even, even, even), 2).draw().stream()
				.mapToDouble(drawn -> ((Drawn) drawn).geometry().bounds().right()).max().orElseThrow();
	}

	/** The light band reaches as far as the gap may, the dark one as far as it surely does. */
	@Test
	void theGapIsABandAndNotOneLine() {
		List<Element> drawn = new GapRing(new ClockFace(26, TWELVE), bulgeAt(6), 2).draw();
		List<Double> reach = drawn.stream().map(each -> ((Drawn) each).geometry().bounds().right()).toList();
		assertTrue(reach.get(0) > reach.get(2) && reach.get(2) > reach.get(1), reach.toString());
	}

	@Test
	void aPieceCanBePointedAt() {
		Scene scene = new Scene("clock", 26, 26, List.of(full(TWELVE).draw(26, metrics).at(13, 13)));
		Group piece = Hits.at(scene, 13 + 6.3, 13 + 1.2, 0.1).orElseThrow();
		assertEquals("0.5 from 2 to 4", piece.tooltip().orElseThrow());
		Group reading = Hits.at(scene, 13, 13 - 10, 0.1).orElseThrow();
		assertEquals("1.5 at 12", reading.tooltip().orElseThrow());
	}

	@Test
	void thickerFilmIsDarker() {
		double[] ink = Arrays.stream(FilmHatch.values()).mapToDouble(hatch -> Raster.ink(Raster.paint(10, 10,
				new Drawn(new Rectangle(0, 0, 10, 10), Style.of(hatch.fill(1), Stroke.of(Ink.BLACK, 0.1))))))
				.toArray();
		for (int i = 1; i < ink.length; i++) {
			assertTrue(ink[i] > ink[i - 1] + 0.06, Arrays.toString(ink));
		}
	}

	@Test
	void eachThicknessHasTheShadingThatTheLegendNames() {
		assertEquals(FilmHatch.HALF, FilmHatch.of(Length.thou("0.5")));
		assertEquals(FilmHatch.ONE, FilmHatch.of(Length.thou("0.75")));
		assertEquals(FilmHatch.THREE, FilmHatch.of(Length.thou("3")));
		assertEquals(FilmHatch.THICKER, FilmHatch.of(Length.thou("7.5")));
	}

	@Test
	void nonsenseIsRefused() {
		assertThrows(IllegalArgumentException.class,
				() -> new RimClock(PlainWords.HINGE, TWELVE, List.of(), Optional.empty(), List.of(), List.of(), 0));
		assertThrows(IllegalArgumentException.class, () -> full(TWELVE).draw(0, metrics));
	}

	private static RimClock full(ClockHour top) {
		List<RimReading> readings = IntStream.range(0, 12)
				.mapToObj(hour -> RimReading.free(new ClockHour(2 * hour), "1.5")).toList();
		return new RimClock(PlainWords.HINGE, top, readings, Optional.of(bulgeAt(6)), List.of(shim("1", 7, 10)),
				List.of(shim("0.5", 2, 4), shim("2", 10, 3)), 2);
	}

	private static PartialShim shim(String thou, int from, int to) {
		return new PartialShim(Arc.between(ClockHour.ofHour(from), ClockHour.ofHour(to)), Length.thou(thou));
	}

	private static GapBand bulgeAt(int station) {
		return new GapBand(bulgeAt(station, 0.6), bulgeAt(station, 1), bulgeAt(station, 1.5));
	}

	private static RimProfile bulgeAt(int station, double height) {
		return RimProfile.ofNanometres(IntStream.range(0, 24)
				.mapToDouble(i -> height * StrictMath.cos((i - station) * Math.PI / 12))
				.mapToLong(thou -> Math.round(25_400 * Math.max(0, thou))).toArray());
	}
}
