package padwright.paper.pdf;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.util.List;

import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;
import org.apache.pdfbox.util.Matrix;

import padwright.drawing.scene.Scene;
import padwright.paper.words.Messages;

/**
 * Writes scenes as the pages of a tagged PDF document with its fonts embedded: text is in paragraphs and headings, a
 * group with a tooltip is a figure that the tooltip describes. Nothing of the machine or the moment goes in:
 * the same scenes give the same bytes.
 */
public final class PdfWriter {

	private static final float POINTS_PER_MILLIMETRE = 72f / 25.4f;

	private PdfWriter() {
	}

	/**
	 * Writes a page for each scene, of its size.
	 *
	 * @param out receives the document; not closed
	 * @param title of the document, shown by viewers
	 * @param pages one or more
	 * @throws IOException if {@code out} fails
	 * @throws IllegalArgumentException if there is no page
	 */
	public static void write(OutputStream out, String title, List<Scene> pages) throws IOException {
		if (pages.isEmpty()) {
			throw new IllegalArgumentException("a document needs a page");
		}
		try (PDDocument document = new PDDocument(); PdfFonts fonts = new PdfFonts(document)) {
			describe(document, title, pages);
			PdfTags tags = new PdfTags(document);
			for (Scene page : pages) {
				writePage(document, fonts, tags, page);
			}
			tags.finish();
			document.save(new UnclosedStream(out));
		}
	}

	private static void describe(PDDocument document, String title, List<Scene> pages) {
		document.setDocumentId(31L * title.hashCode() + pages.toString().hashCode());
		document.getDocumentInformation().setTitle(title);
		document.getDocumentCatalog().setLanguage(Messages.of("language"));
		PDViewerPreferences preferences = new PDViewerPreferences(new COSDictionary());
		preferences.setDisplayDocTitle(true);
		document.getDocumentCatalog().setViewerPreferences(preferences);
	}

	private static void writePage(PDDocument document, PdfFonts fonts, PdfTags tags, Scene scene)
			throws IOException {
		float width = (float) scene.width() * POINTS_PER_MILLIMETRE;
		float height = (float) scene.height() * POINTS_PER_MILLIMETRE;
		PDPage page = new PDPage(new PDRectangle(width, height));
		document.addPage(page);
		tags.begin(page);
		try (PDPageContentStream content = new PDPageContentStream(document, page)) {
			content.transform(new Matrix(POINTS_PER_MILLIMETRE, 0, 0, -POINTS_PER_MILLIMETRE, 0, height));
			PdfElements elements = new PdfElements(document, content, fonts, tags);
			scene.elements().forEach(element -> element.accept(elements));
		} catch (UncheckedIOException e) {
			throw e.getCause();
		}
	}
}
