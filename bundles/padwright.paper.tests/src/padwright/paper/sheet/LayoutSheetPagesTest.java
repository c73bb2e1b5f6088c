package padwright.paper.sheet;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

import padwright.drawing.scene.Bounds;
import padwright.drawing.scene.Circle;
import padwright.drawing.scene.Geometry;
import padwright.drawing.scene.Path;
import padwright.drawing.scene.Rectangle;
import padwright.drawing.scene.Scene;
import padwright.paper.page.PaperSize;
import padwright.paper.page.PlacedShapes;
import padwright.paper.page.PlacedShapes.Placed;
import padwright.paper.pdf.PdfText;

class LayoutSheetPagesTest {

	private static final double MARGIN = 9.9;

	@Test
	void cupsLieToScale() {
		Scene map = new LayoutSheetPages(DemoLayout.sheet(), PaperSize.A4).pages().get(0);
		List<Placed<Circle>> cups = PlacedShapes.in(map, Circle.class).stream()
				.filter(circle -> circle.shape().radius() == 17.5 / 2 / 2).toList();
		assertEquals(10, cups.size(), "cups of 17.5 mm at 1 : 2");
		for (int key = 1; key < cups.size(); key++) {
			double apart = centreY(cups.get(key)) - centreY(cups.get(key - 1));
			assertEquals(33.0 / 2, apart, 1e-9, "keys are 33 mm apart");
		}
	}

	@Test
	void anglesAreUnrolledToScale() {
		Scene map = new LayoutSheetPages(DemoLayout.sheet(), PaperSize.A4).pages().get(0);
		List<Placed<Circle>> cups = PlacedShapes.in(map, Circle.class).stream()
				.filter(circle -> circle.shape().radius() == 17.5 / 2 / 2).toList();
		double aside = cups.get(5).x(cups.get(5).shape().x(), 0) - cups.get(0).x(cups.get(0).shape().x(), 0);
		assertEquals(Math.PI * 19 * 30 / 360 / 2, aside, 1e-9, "30 degrees around a bore of 19 mm at 1 : 2");
	}

	@Test
	void halfAFingerIsHalfASquare() {
		List<Placed<Rectangle>> marks = all(Rectangle.class).filter(mark -> mark.shape().width() == 2.3).toList();
		assertEquals(List.of(2.3, 2.3, 1.15), marks.stream().map(mark -> mark.shape().height()).sorted(Comparator.reverseOrder()).toList());
	}

	/** Of the two holes D4 closes one and leaves half of the other open; E4 opens both. */
	@Test
	void holesAreDrawnOpenHalfAndClosed() {
		List<Circle> holes = all(Circle.class).map(Placed::shape)
				.filter(circle -> Math.abs(circle.radius() - 2.3 / 2) < 0.15).toList();
		assertEquals(4, holes.size());
		assertEquals(1, holes.stream().filter(circle -> circle.radius() > 2.3 / 2).count(), "closed");
	}

	@Test
	void theHeadJointShowsItsEmbouchureAndHasItsLength() {
		Scene page = new LayoutSheetPages(DemoLayout.sheet(), PaperSize.A4).pages().get(0);
		assertEquals(1, PlacedShapes.in(page, Path.class).stream().map(Placed::shape).map(Path::bounds)
				.filter(bounds -> Math.abs(bounds.height() - 6) < 1e-9 && Math.abs(bounds.width() - 5) < 1e-9).count(),
				"12 by 10 mm at 1 : 2, from above");
		assertEquals(1, PlacedShapes.in(page, Path.class).stream().map(Placed::shape).map(Path::bounds)
				.filter(bounds -> Math.abs(bounds.height() - 100) < 1e-9).count(), "200 mm at 1 : 2");
	}

	private static <T extends Geometry> Stream<Placed<T>> all(Class<T> kind) {
		return new LayoutSheetPages(DemoLayout.sheet(), PaperSize.A4).pages().stream()
				.flatMap(page -> PlacedShapes.in(page, kind).stream());
	}

	/** The cup at 30 degrees hides a third of its width; those on top are seen edge on. */
	@Test
	void cupsStandAtTheirAngleInTheSideView() {
		List<Placed<Path>> drums = PlacedShapes.in(new LayoutSheetPages(DemoLayout.sheet(), PaperSize.A4).pages().get(0),
				Path.class);
		double[] reach = drums.stream().filter(drum -> high(drum) > 17.4 / 2 && high(drum) < 17.6 / 2)
				.mapToDouble(LayoutSheetPagesTest::right).toArray();
		assertEquals(10, reach.length, "a cup of 17.5 mm at 1 : 2 for each key");
		double middle = reach[0] - (19 / 2.0 + 2.5 + 2.95) / 2;
		assertEquals(middle + (19 / 2.0 + 2.5 + 2.95) / 2 * Math.cos(Math.PI / 6) + 17.5 / 4 * 0.5, reach[5], 1e-9);
	}

	private static double high(Placed<Path> drum) {
		Bounds bounds = drum.shape().bounds();
		return bounds.height();
	}

	private static double right(Placed<Path> drum) {
		Bounds bounds = drum.shape().bounds();
		return drum.x(bounds.left() + bounds.width(), 0);
	}

	private static double centreY(Placed<Circle> cup) {
		return cup.y(0, cup.shape().y());
	}

	@Test
	void saysEveryKeyCouplingAndFingering() throws IOException {
		byte[] pdf = PdfText.write("Key layout", new LayoutSheetPages(DemoLayout.sheet(), PaperSize.A4).pages());
		String text = "";
		for (int page = 1; page <= new LayoutSheetPages(DemoLayout.sheet(), PaperSize.A4).pages().size(); page++) {
			text += PdfText.ofPage(pdf, page).replaceAll("\\s+", " ");
		}
		for (String expected : List.of("revision C", "Drawing scale 1 : 2", "body joint", "1 key 1 K0 open R1 near 12 3.2 30 grams",
				"3 key 3 K2 open key 2 near", "1 key 1 body joint 10 0° 14 1 2.5 0.4 drawn 17.5 2.95 6 screw",
				"H1 first hole · L1", "Sections through the holes, 1 : 1",
				"hole 14, rim 1, chimney 2.5, undercut 0.4, cup 17.5, deep 2.95, opening 6, arm 12",
				"hole 8, chimney 4, undercut 0.6", "head joint", "30°", "not said",
				"1 1 key 1 closes 2 key 2 screw UNM 1.00, ratio 1.5", "holds", "body joint 350", "trill", "D4",
				"H1", "12 o'clock looks at: hinge", "50 mm")) {
			assertTrue(text.contains(expected), expected + " in " + text);
		}
		assertTrue(text.replace(" ", "").contains("LowC"), "stands on end, so that its letters are read one by one");
	}

	@ParameterizedTest
	@EnumSource(PaperSize.class)
	void nothingLeavesThePageOrLiesOverAnotherAndTheBytesAreTheSame(PaperSize paper) throws IOException {
		byte[] pdf = PdfText.write("Key layout", new LayoutSheetPages(DemoLayout.sheet(), paper).pages());
		assertEquals(List.of(), PdfText.outside(pdf, MARGIN).stream().limit(5).toList());
		assertEquals(List.of(), PdfText.overlapping(pdf).stream().limit(5).toList());
		assertArrayEquals(pdf, PdfText.write("Key layout", new LayoutSheetPages(DemoLayout.sheet(), paper).pages()));
	}

	@Test
	void aLayoutWithoutKeysAndHolesIsRefused() {
		LayoutSheet sheet = DemoLayout.sheet();
		assertThrows(IllegalArgumentException.class, () -> new LayoutSheet(sheet.head(), sheet.title(), "hinge",
				List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of()));
	}
}
