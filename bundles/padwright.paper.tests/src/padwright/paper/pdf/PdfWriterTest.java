package padwright.paper.pdf;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import java.util.Locale;
import java.util.TimeZone;

import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

import padwright.drawing.font.DejaVuMetrics;
import padwright.drawing.scene.Face;
import padwright.drawing.scene.Scene;
import padwright.drawing.scene.Text;

class PdfWriterTest {

	private static final Scene PAGE = page("F♯ office \uE000 <&>");

	@Test
	void theSameScenesGiveTheSameBytesWhateverTheMachinesSettings() {
		byte[] expected = PdfText.write("Card", List.of(PAGE));
		Locale locale = Locale.getDefault();
		TimeZone zone = TimeZone.getDefault();
		try {
			Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
			TimeZone.setDefault(TimeZone.getTimeZone("Asia/Kathmandu"));
			assertArrayEquals(expected, PdfText.write("Card", List.of(PAGE)));
		} finally {
			Locale.setDefault(locale);
			TimeZone.setDefault(zone);
		}
	}

	@Test
	void otherScenesHaveAnotherIdentity() throws IOException {
		assertFalse(identity("Card", "a").equals(identity("Card", "b")));
		assertFalse(identity("Card", "a").equals(identity("Sheet", "a")));
	}

	private static String identity(String title, String text) throws IOException {
		try (PDDocument document = Loader.loadPDF(PdfText.write(title, List.of(page(text))))) {
			return document.getDocument().getDocumentID().toString();
		}
	}

	@Test
	void isTitledAndSpokenAndOfItsSize() throws IOException {
		try (PDDocument document = Loader.loadPDF(PdfText.write("Card ♯", List.of(PAGE, PAGE)))) {
			assertEquals("Card ♯", document.getDocumentInformation().getTitle());
			assertNull(document.getDocumentInformation().getCreationDate());
			assertEquals("en", document.getDocumentCatalog().getLanguage());
			assertTrue(document.getDocumentCatalog().getViewerPreferences().displayDocTitle());
			assertEquals(2, document.getNumberOfPages());
			assertEquals(100 / 25.4 * 72, document.getPage(0).getMediaBox().getWidth(), 0.001);
			assertEquals(50 / 25.4 * 72, document.getPage(0).getMediaBox().getHeight(), 0.001);
		}
	}

	@Test
	void everyFontIsEmbeddedAsASubset() throws IOException {
		byte[] pdf = PdfText.write("Card", List.of(PAGE));
		try (PDDocument document = Loader.loadPDF(pdf)) {
			PDPage page = document.getPage(0);
			int fonts = 0;
			for (COSName name : page.getResources().getFontNames()) {
				PDFont font = page.getResources().getFont(name);
				assertTrue(font.isEmbedded(), font.getName());
				assertTrue(font.getName().matches("[A-Z]{6}\\+DejaVuSans.*"), font.getName());
				fonts++;
			}
			assertEquals(2, fonts);
		}
		assertTrue(pdf.length < 40_000, pdf.length + " bytes");
	}

	@Test
	void textIsExtractedAsWrittenAndStrangeCharactersAreMarked() throws IOException {
		assertTrue(PdfText.ofPage(PdfText.write("Card", List.of(PAGE)), 1).contains("F♯ office \uFFFD <&>"));
	}

	/** What a reader measures, ligatures or not, is what the layout reckoned with. */
	@ParameterizedTest
	@EnumSource(Face.class)
	void textTakesTheRoomThatItWasLaidOutFor(Face face) throws IOException {
		Text text = Text.of("office: ffi fl F♯ → AVATAR.", 10, 20, face, 5);
		byte[] pdf = PdfText.write("Card", List.of(new Scene("page", 200, 50, List.of(text))));
		double points = new DejaVuMetrics().width(text) / 25.4 * 72;
		assertEquals(points, PdfText.lengthOfLine(pdf), points * 0.002);
	}

	@Test
	void theStreamIsLeftOpen() throws IOException {
		OutputStream out = new OutputStream() {
			@Override
			public void write(int octet) {
				// taken
			}

			@Override
			public void close() {
				throw new AssertionError("closed, though it belongs to the caller");
			}
		};
		PdfWriter.write(out, "Card", List.of(PAGE));
	}

	@Test
	void aDocumentWithoutPagesIsRefused() {
		assertThrows(IllegalArgumentException.class,
				() -> PdfWriter.write(OutputStream.nullOutputStream(), "Card", List.of()));
	}

	private static Scene page(String text) {
		return new Scene("page", 100, 50, List.of(Text.of(text, 10, 20, Face.REGULAR, 5),
				Text.of("♭", 10, 30, Face.CONDENSED_BOLD, 5), Text.of("", 10, 40, Face.BOLD, 5)));
	}
}
