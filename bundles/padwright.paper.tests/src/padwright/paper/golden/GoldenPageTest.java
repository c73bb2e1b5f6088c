package padwright.paper.golden;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.TreeSet;
import java.util.function.Supplier;
import javax.imageio.ImageIO;

import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

import padwright.drawing.scene.Scene;
import padwright.paper.card.BenchCardPages;
import padwright.paper.card.DemoCard;
import padwright.paper.film.DemoFilmSheet;
import padwright.paper.film.FilmSheetPages;
import padwright.paper.handback.DemoHandBack;
import padwright.paper.handback.HandBackPages;
import padwright.paper.page.PaperSize;
import padwright.paper.pdf.PdfText;
import padwright.paper.quote.DemoQuote;
import padwright.paper.quote.QuotePages;
import padwright.paper.sheet.DemoLayout;
import padwright.paper.sheet.LayoutSheetPages;

/** The first page of each invented paper looks as it did when it was last looked at. */
class GoldenPageTest {

	private static final Map<String, Supplier<List<Scene>>> PAPERS = Map.of(
			"bench-card", () -> new BenchCardPages(DemoCard.boehmFlute(), PaperSize.A4).pages(),
			"film", () -> new FilmSheetPages(DemoFilmSheet.random(new SplittableRandom(3)), PaperSize.A4).pages(),
			"hand-back", () -> new HandBackPages(DemoHandBack.page(), PaperSize.A4).pages(),
			"key-layout", () -> new LayoutSheetPages(DemoLayout.sheet(), PaperSize.A4).pages(),
			"quote", () -> new QuotePages(DemoQuote.sheet(), PaperSize.A4).pages());
	private static final int RENDERED_DPI = 144;
	private static final int SHRINK = 4;
	private static final int TILE = 12;
	/** Mean difference of grey levels (of 255) over the page, and over the tile that differs most. */
	private static final double PAGE_TOLERANCE = 0.5;
	private static final double TILE_TOLERANCE = 6;

	private static final Path FRESH = Path.of("target", "fresh");

	static Set<String> papers() {
		return new TreeSet<>(PAPERS.keySet());
	}

	/** For whoever changed the page on purpose: look at it, and copy it over the golden one. */
	private static void keep(BufferedImage page, String paper) throws IOException {
		Files.createDirectories(FRESH);
		ImageIO.write(page, "png", FRESH.resolve(paper + ".png").toFile());
	}

	@ParameterizedTest
	@MethodSource("papers")
	void looksAsItDid(String paper) throws IOException {
		BufferedImage golden;
		try (InputStream file = GoldenPageTest.class.getResourceAsStream(paper + ".png")) {
			golden = ImageIO.read(file);
		}
		BufferedImage page = render(paper);
		keep(page, paper);
		assertEquals(golden.getWidth(), page.getWidth());
		assertEquals(golden.getHeight(), page.getHeight());
		assertTrue(difference(golden, page, 0, 0, page.getWidth(), page.getHeight()) < PAGE_TOLERANCE);
		for (int x = 0; x + TILE <= page.getWidth(); x += TILE) {
			for (int y = 0; y + TILE <= page.getHeight(); y += TILE) {
				assertTrue(difference(golden, page, x, y, TILE, TILE) < TILE_TOLERANCE,
						"the page looks otherwise about pixel " + x + ", " + y);
			}
		}
	}

	private static double difference(BufferedImage one, BufferedImage other, int left, int top, int width, int height) {
		long sum = 0;
		for (int x = left; x < left + width; x++) {
			for (int y = top; y < top + height; y++) {
				sum += Math.abs(one.getRaster().getSample(x, y, 0) - other.getRaster().getSample(x, y, 0));
			}
		}
		return sum / (double) (width * height);
	}

	private static BufferedImage render(String paper) throws IOException {
		byte[] pdf = PdfText.write(paper, PAPERS.get(paper).get());
		try (PDDocument document = Loader.loadPDF(pdf)) {
			BufferedImage large = new PDFRenderer(document).renderImageWithDPI(0, RENDERED_DPI, ImageType.GRAY);
			return shrink(large);
		}
	}

	private static BufferedImage shrink(BufferedImage large) {
		BufferedImage small = new BufferedImage(large.getWidth() / SHRINK, large.getHeight() / SHRINK,
				BufferedImage.TYPE_BYTE_GRAY);
		for (int x = 0; x < small.getWidth(); x++) {
			for (int y = 0; y < small.getHeight(); y++) {
				small.getRaster().setSample(x, y, 0, mean(large, x * SHRINK, y * SHRINK));
			}
		}
		return small;
	}

	private static int mean(BufferedImage image, int left, int top) {
		int sum = 0;
		for (int x = left; x < left + SHRINK; x++) {
			for (int y = top; y < top + SHRINK; y++) {
				sum += image.getRaster().getSample(x, y, 0);
			}
		}
		return sum / (SHRINK * SHRINK);
	}

	/** Writes the golden pages anew into the folder given; look at them before they are committed. */
	public static void main(String[] arguments) throws IOException {
		for (String paper : papers()) {
			ImageIO.write(render(paper), "png", new File(arguments[0], paper + ".png"));
		}
	}
}
