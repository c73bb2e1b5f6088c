package padwright.drawing.font;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Color;
import java.awt.Font;
import java.awt.FontFormatException;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.font.FontRenderContext;
import java.awt.geom.Path2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.InputStream;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

import padwright.drawing.scene.Anchor;
import padwright.drawing.scene.Bounds;
import padwright.drawing.scene.Face;
import padwright.drawing.scene.Path;
import padwright.drawing.scene.Segment;
import padwright.drawing.scene.Text;

class DejaVuOutlinesTest {

	private static final int WIDTH = 1200;
	private static final int HEIGHT = 300;
	private static final int BLACK = 0xff000000;
	private static final String TEXT = "F♯ B♭ 0.5 äß⅜";

	/** The JDK's own reader of TrueType files, without hinting or kerning, is the oracle. */
	@ParameterizedTest
	@EnumSource
	void outlinesAreThoseOfTheJdk(Face face) throws IOException, FontFormatException {
		Text text = Text.of(TEXT, 3, 20, face, 10);
		Path.Recorder traced = new Path.Recorder();
		DejaVuOutlines.trace(text, traced);
		BufferedImage ours = filled(outline(traced.path()));
		BufferedImage theirs = filled(outline(face));
		long ink = 0;
		long different = 0;
		for (int x = 0; x < WIDTH; x++) {
			for (int y = 0; y < HEIGHT; y++) {
				ink += theirs.getRGB(x, y) == BLACK ? 1 : 0;
				different += ours.getRGB(x, y) != theirs.getRGB(x, y) ? 1 : 0;
			}
		}
		assertTrue(ink > 10_000, "there is something to compare");
		assertTrue(different < ink / 50, different + " of " + ink + " points differ");
	}

	private static BufferedImage filled(Shape outline) {
		BufferedImage image = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_BYTE_BINARY);
		Graphics2D graphics = image.createGraphics();
		graphics.setColor(Color.WHITE);
		graphics.fillRect(0, 0, WIDTH, HEIGHT);
		graphics.setColor(Color.BLACK);
		graphics.scale(10, 10);
		graphics.fill(outline);
		graphics.dispose();
		return image;
	}

	private static Shape outline(Face face) throws IOException, FontFormatException {
		try (InputStream file = DejaVu.open(face)) {
			Font font = Font.createFont(Font.TRUETYPE_FONT, file).deriveFont(10f);
			return font.createGlyphVector(new FontRenderContext(null, true, true), TEXT).getOutline(3, 20);
		}
	}

	private static Shape outline(Path path) {
		Path2D.Double outline = new Path2D.Double(Path2D.WIND_NON_ZERO);
		for (Segment step : path.segments()) {
			var at = step.coordinates();
			switch (step.kind()) {
			case MOVE -> outline.moveTo(at.get(0), at.get(1));
			case LINE -> outline.lineTo(at.get(0), at.get(1));
			case CURVE -> outline.curveTo(at.get(0), at.get(1), at.get(2), at.get(3), at.get(4), at.get(5));
			case CLOSE -> outline.closePath();
			}
		}
		return outline;
	}

	@ParameterizedTest
	@EnumSource
	void anchorsMoveTheWholeText(Anchor anchor) {
		double width = new DejaVuMetrics().width(TEXT, Face.BOLD, 4);
		Bounds start = bounds(Anchor.START);
		assertEquals(start.left() - anchor.fraction() * width, bounds(anchor).left(), 1e-9);
		assertEquals(start.top(), bounds(anchor).top(), 1e-9);
	}

	private static Bounds bounds(Anchor anchor) {
		Path.Recorder traced = new Path.Recorder();
		DejaVuOutlines.trace(Text.of(TEXT, 20, 9, Face.BOLD, 4).anchored(anchor), traced);
		return traced.path().bounds();
	}
}
