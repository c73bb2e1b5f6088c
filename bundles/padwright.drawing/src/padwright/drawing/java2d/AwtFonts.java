package padwright.drawing.java2d;

import java.awt.Font;
import java.awt.FontFormatException;
import java.io.IOException;
import java.io.InputStream;
import java.util.EnumMap;
import java.util.Map;

import padwright.drawing.font.DejaVu;
import padwright.drawing.scene.Face;

/** The font files as Java2D fonts, each loaded once. */
final class AwtFonts {

	private static final Map<Face, Font> FONTS = new EnumMap<>(Face.class);

	private AwtFonts() {
	}

	static Font of(Face face) {
		synchronized (FONTS) {
			return FONTS.computeIfAbsent(face, AwtFonts::load);
		}
	}

	private static Font load(Face face) {
		try (InputStream file = DejaVu.open(face)) {
			return Font.createFont(Font.TRUETYPE_FONT, file);
		} catch (IOException | FontFormatException e) {
			throw new IllegalStateException("the font of face " + face + " cannot be used on this screen", e);
		}
	}
}
