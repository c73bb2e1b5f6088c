package padwright.drawing.font;

import java.io.IOException;
import java.io.InputStream;

import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;

import padwright.drawing.scene.Face;

/** The DejaVu Sans font files (free to use and embed), which have ♯ and ♭. */
public final class DejaVu {

	private static final String FOLDER = "/net/sf/jasperreports/fonts/dejavu/";

	private DejaVu() {
	}

	/** The family by its name in SVG and on a desktop. */
	public static String family(Face face) {
		return face.isCondensed() ? "DejaVu Sans Condensed" : "DejaVu Sans";
	}

	/** The TrueType file of a face; the caller closes it. */
	public static InputStream open(Face face) {
		String name = "DejaVuSans" + (face.isCondensed() ? "Condensed" : "") + (face.isBold() ? "-Bold" : "") + ".ttf";
		InputStream file = DejaVu.class.getResourceAsStream(FOLDER + name);
		if (file == null) {
			throw new IllegalStateException("the font " + name + " is missing from the installation");
		}
		return file;
	}

	/** The face parsed, with glyph substitution off; the caller closes it. */
	public static TrueTypeFont parse(Face face) throws IOException {
		try (InputStream file = open(face)) {
			TrueTypeFont font = new TTFParser().parse(new RandomAccessReadBuffer(file));
			font.setEnableGsub(false);
			return font;
		}
	}
}
