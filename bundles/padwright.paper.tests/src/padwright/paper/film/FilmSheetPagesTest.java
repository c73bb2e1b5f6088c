package padwright.paper.film;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

import padwright.drawing.scene.Circle;
import padwright.drawing.scene.Line;
import padwright.drawing.scene.RingSector;
import padwright.drawing.scene.Scene;
import padwright.engine.clock.Arc;
import padwright.engine.clock.ClockHour;
import padwright.engine.film.PartialShim;
import padwright.engine.length.Length;
import padwright.paper.page.PaperSize;
import padwright.paper.page.PlacedShapes;
import padwright.paper.page.PlacedShapes.Placed;
import padwright.paper.pdf.PdfText;

class FilmSheetPagesTest {

	private static final double MARGIN = 9.9;

	@ParameterizedTest
	@EnumSource(PaperSize.class)
	void discsStayApartAndOnThePageAndPiecesApartOnTheirDisc(PaperSize paper) {
		for (int seed = 0; seed < 12; seed++) {
			FilmSheet sheet = DemoFilmSheet.random(new SplittableRandom(seed));
			int pieces = 0;
			for (Scene page : new FilmSheetPages(sheet, paper).pages()) {
				assertApart(page);
				List<Placed<RingSector>> sectors = PlacedShapes.in(page, RingSector.class);
				assertPiecesApart(sectors);
				pieces += sectors.size();
			}
			assertEquals(sheet.groups().stream().mapToInt(group -> group.pieces().size()).sum(), pieces);
		}
	}

	private static void assertApart(Scene page) {
		List<Placed<Circle>> discs = PlacedShapes.in(page, Circle.class);
		for (int i = 0; i < discs.size(); i++) {
			Circle disc = discs.get(i).shape();
			double x = discs.get(i).x(disc.x(), disc.y());
			double y = discs.get(i).y(disc.x(), disc.y());
			double edge = MARGIN + disc.radius();
			assertTrue(x >= edge && x <= page.width() - edge && y >= edge && y <= page.height() - edge);
			for (int j = 0; j < i; j++) {
				Circle other = discs.get(j).shape();
				double apart = Math.hypot(x - discs.get(j).x(other.x(), other.y()),
						y - discs.get(j).y(other.x(), other.y()));
				assertTrue(apart > disc.radius() + other.radius(), "discs " + i + " and " + j);
			}
		}
	}

	private static void assertPiecesApart(List<Placed<RingSector>> sectors) {
		for (int i = 0; i < sectors.size(); i++) {
			for (int j = 0; j < i; j++) {
				RingSector one = sectors.get(i).shape();
				RingSector other = sectors.get(j).shape();
				boolean sameDisc = sectors.get(i).map().equals(sectors.get(j).map());
				boolean apart = one.from() >= other.from() + other.sweep() - 1e-9
						|| other.from() >= one.from() + one.sweep() - 1e-9;
				assertTrue(!sameDisc || apart, one + " over " + other);
			}
		}
	}

	@Test
	void aPieceIsDrawnAtFullSize() {
		PartialShim shim = new PartialShim(Arc.between(ClockHour.ofHour(2), ClockHour.ofHour(5)), Length.thou("0.5"));
		FilmPiece piece = new FilmPiece("F♯", shim, Length.millimetres("17.5"), false);
		FilmSheet sheet = DemoFilmSheet.of(List.of(DemoFilmSheet.group(List.of(), List.of(piece))));
		Scene page = new FilmSheetPages(sheet, PaperSize.A4).pages().get(0);
		RingSector drawn = PlacedShapes.in(page, RingSector.class).get(0).shape();
		assertEquals(8.75, drawn.outer());
		assertEquals(8.75 - RingSize.WIDTH, drawn.inner());
		assertEquals(Math.PI / 2, drawn.sweep(), 1e-12);
	}

	@Test
	void theScaleIsFiftyMillimetresLong() {
		Scene page = new FilmSheetPages(DemoFilmSheet.random(new SplittableRandom(1)), PaperSize.A4).pages().get(0);
		assertEquals(1, PlacedShapes.in(page, Line.class).stream().map(Placed::shape)
				.filter(line -> line.y1() == line.y2() && line.x2() - line.x1() == 50).count());
	}

	@Test
	void countsShimsPiecesBlanksAndWaste() throws IOException {
		PartialShim half = new PartialShim(Arc.between(ClockHour.ofHour(1), ClockHour.ofHour(7)), Length.thou("0.5"));
		List<FilmPiece> pieces = List.of(new FilmPiece("F♯", half, Length.millimetres("10"), false),
				new FilmPiece("G", half, Length.millimetres("10"), true));
		FilmGroup group = DemoFilmSheet.group(List.of(new FullShims(Optional.of(Length.millimetres("17.5")), 3)), pieces);
		byte[] pdf = PdfText.write("Film", new FilmSheetPages(DemoFilmSheet.of(List.of(group)), PaperSize.LETTER).pages());
		String text = PdfText.ofPage(pdf, 1).replaceAll("\\s+", " ");
		// The ring of a 10 mm disc reaches in to 0.4 of its radius: 0.16 of the area is waste.
		for (String expected : List.of("0.5 thou", "3 full shims, 2 partial pieces: 5 blanks taken of 80 on hand",
				"3 × 17.5 mm", "1 disc instead of 2 blanks", "waste 16 %", "F♯ 1 to 7", "G 1 to 7 *", "50 mm",
				"page 1 of 1", "not on hand")) {
			assertTrue(text.contains(expected), expected + " in " + text);
		}
	}

	@ParameterizedTest
	@EnumSource(PaperSize.class)
	void nothingLeavesThePageOrLiesOverAnotherAndTheBytesAreTheSame(PaperSize paper) throws IOException {
		byte[] pdf = PdfText.write("Film", new FilmSheetPages(DemoFilmSheet.random(new SplittableRandom(5)), paper).pages());
		assertEquals(List.of(), PdfText.outside(pdf, MARGIN).stream().limit(5).toList());
		assertEquals(List.of(), PdfText.overlapping(pdf).stream().limit(5).toList());
		FilmSheet again = DemoFilmSheet.random(new SplittableRandom(5));
		assertArrayEquals(pdf, PdfText.write("Film", new FilmSheetPages(again, paper).pages()));
	}

	@Test
	void withNothingToCutItSaysWhetherThereWillBe() throws IOException {
		assertTrue(firstPage(false).contains("Nothing to cut."));
		assertTrue(firstPage(true).contains("Nothing to cut yet."));
	}

	private static String firstPage(boolean isOpen) throws IOException {
		return PdfText.ofPage(PdfText.write("Film", new FilmSheetPages(DemoFilmSheet.of(List.of(), isOpen), PaperSize.A4).pages()), 1);
	}
}
