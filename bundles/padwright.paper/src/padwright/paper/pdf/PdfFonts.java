package padwright.paper.pdf;

import java.io.Closeable;
import java.io.IOException;
import java.util.EnumMap;
import java.util.Map;

import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

import padwright.drawing.font.DejaVu;
import padwright.drawing.font.DejaVuMetrics;
import padwright.drawing.scene.Face;
import padwright.drawing.scene.FontMetrics;

/** The fonts of one document, each embedded on first use as a subset; to be closed after the document is saved. */
final class PdfFonts implements Closeable {

	private static final int REPLACEMENT = '\uFFFD';

	private final PDDocument document;
	private final FontMetrics metrics = new DejaVuMetrics();
	private final Map<Face, PDFont> embedded = new EnumMap<>(Face.class);
	private final Map<Face, TrueTypeFont> open = new EnumMap<>(Face.class);

	PdfFonts(PDDocument document) {
		this.document = document;
	}

	FontMetrics metrics() {
		return metrics;
	}

	PDFont of(Face face) throws IOException {
		PDFont font = embedded.get(face);
		if (font == null) {
			TrueTypeFont parsed = DejaVu.parse(face);
			open.put(face, parsed);
			font = PDType0Font.load(document, parsed, true);
			embedded.put(face, font);
		}
		return font;
	}

	/** The text with a replacement sign for each character that the face lacks. */
	String drawable(String text, Face face) {
		return text.codePoints().map(character -> metrics.hasGlyph(character, face) ? character : REPLACEMENT)
				.collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append).toString();
	}

	@Override
	public void close() throws IOException {
		for (TrueTypeFont font : open.values()) {
			font.close();
		}
	}
}
