package padwright.paper;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;

import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/** The faces that everything on paper is set in; they have the glyphs of key names, such as ♯ and ♭. */
public enum PaperFont {
	/** Upright. */
	REGULAR("DejaVuSans.ttf"),
	/** Bold. */
	BOLD("DejaVuSans-Bold.ttf"),
	/** Narrow, for tables. */
	NARROW("DejaVuSansCondensed.ttf");

	private static final String FOLDER = "/net/sf/jasperreports/fonts/dejavu/";

	private final String file;

	PaperFont(String file) {
		this.file = file;
	}

	/** The bytes of the font file; the caller closes it. */
	public InputStream open() {
		InputStream stream = PaperFont.class.getResourceAsStream(FOLDER + file);
		if (stream == null) {
			throw new IllegalStateException("the font " + file + " is missing from the product");
		}
		return stream;
	}

	/** This face for use in {@code document}, of which only the glyphs used are embedded. */
	public PDFont in(PDDocument document) {
		try (InputStream stream = open()) {
			return PDType0Font.load(document, stream, true);
		} catch (IOException e) {
			throw new UncheckedIOException(e);
		}
	}
}
