package padwright.drawing.font;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Font;
import java.awt.font.FontRenderContext;
import java.io.InputStream;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

import padwright.drawing.scene.Face;

class DejaVuMetricsTest {

	private static final String SPECIMEN = "F♯ B♭ 7.5 + 5 + 2 = 14.5 → 0.4, office − •●…";

	private final DejaVuMetrics metrics = new DejaVuMetrics();

	@ParameterizedTest
	@EnumSource(Face.class)
	void everySignOfADrawingHasAGlyph(Face face) {
		SPECIMEN.codePoints().forEach(sign -> assertTrue(metrics.hasGlyph(sign, face), Character.toString(sign)));
		assertFalse(metrics.hasGlyph(0xE000, face), "a private-use character");
	}

	/** The Java runtime's own text layout, an independent reader of the same files, gives the same widths. */
	@ParameterizedTest
	@EnumSource(Face.class)
	void widthsAreThoseOfTheJavaRuntime(Face face) throws Exception {
		try (InputStream file = DejaVu.open(face)) {
			Font font = Font.createFont(Font.TRUETYPE_FONT, file).deriveFont(100f);
			double width = font.getStringBounds(SPECIMEN, new FontRenderContext(null, true, true)).getWidth();
			assertEquals(width, metrics.width(SPECIMEN, face, 100), width * 1e-4);
		}
	}
}
