package padwright.paper;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.awt.Color;
import java.io.ByteArrayOutputStream;
import java.io.IOException;

import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

import de.rototor.pdfbox.graphics2d.PdfBoxGraphics2D;

class PaperFontTest {

	private static final String KEY_NAMES = "C♯ B♭ 7½";

	@ParameterizedTest
	@EnumSource
	void keyNamesSurviveThePdf(PaperFont font) throws IOException {
		try (PDDocument document = new PDDocument()) {
			PDPage page = new PDPage();
			document.addPage(page);
			try (PDPageContentStream text = new PDPageContentStream(document, page)) {
				text.beginText();
				text.setFont(font.in(document), 12);
				text.newLineAtOffset(72, 720);
				text.showText(KEY_NAMES);
				text.endText();
			}
			assertEquals(KEY_NAMES, textOf(document));
		}
	}

	@Test
	void canvasDrawsIntoThePdf() throws IOException {
		try (PDDocument document = new PDDocument()) {
			PdfBoxGraphics2D canvas = new PdfBoxGraphics2D(document, 100, 100);
			canvas.setColor(Color.BLACK);
			canvas.drawOval(10, 10, 80, 80);
			canvas.dispose();
			assertEquals(100, canvas.getXFormObject().getBBox().getWidth());
		}
	}

	private static String textOf(PDDocument document) throws IOException {
		ByteArrayOutputStream bytes = new ByteArrayOutputStream();
		document.save(bytes);
		try (PDDocument read = Loader.loadPDF(bytes.toByteArray())) {
			return new PDFTextStripper().getText(read).strip();
		}
	}
}
