package padwright.drawing.java2d;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.Optional;

import org.junit.jupiter.api.Test;

import padwright.drawing.Raster;
import padwright.drawing.scene.Anchor;
import padwright.drawing.scene.Circle;
import padwright.drawing.scene.Drawn;
import padwright.drawing.scene.Element;
import padwright.drawing.scene.Face;
import padwright.drawing.scene.Group;
import padwright.drawing.scene.Hatch;
import padwright.drawing.scene.Ink;
import padwright.drawing.scene.Rectangle;
import padwright.drawing.scene.Scene;
import padwright.drawing.scene.Stroke;
import padwright.drawing.scene.Style;
import padwright.drawing.scene.Text;
import padwright.drawing.scene.Transform;

class Java2DPainterTest {

	@Test
	void sharpAndFlatAreGlyphsOfTheirOwn() {
		assertFalse(Raster.same(letter("♯"), letter("\uE000")), "the box of a missing glyph");
		assertFalse(Raster.same(letter("♭"), letter("\uE000")), "the box of a missing glyph");
		assertTrue(Raster.ink(letter("♯")) > 0.002);
	}

	private static BufferedImage letter(String text) {
		return Raster.paint(10, 10, Text.of(text, 5, 8, Face.BOLD, 8).anchored(Anchor.MIDDLE));
	}

	@Test
	void aGroupIsMovedAndTheGraphicsLeftAsItWas() {
		Element square = new Drawn(new Rectangle(0, 0, 2, 2), Style.filled(Ink.BLACK));
		Element moved = Group.of(List.of(square)).at(5, 6);
		Element there = new Drawn(new Rectangle(5, 6, 2, 2), Style.filled(Ink.BLACK));
		assertTrue(Raster.same(Raster.paint(10, 10, moved), Raster.paint(10, 10, there)));
		BufferedImage image = new BufferedImage(10, 10, BufferedImage.TYPE_INT_RGB);
		var graphics = image.createGraphics();
		Java2DPainter.paint(graphics, new Scene("x", 10, 10, List.of(moved)), 3);
		assertEquals(new AffineTransform(), graphics.getTransform());
	}

	@Test
	void aHatchKeepsToItsOutline() {
		Hatch hatch = new Hatch(Stroke.of(Ink.BLACK, 0.3), 0.6, 30, false);
		BufferedImage image = Raster.paint(10, 10,
				new Drawn(new Circle(5, 5, 3), new Style(Optional.of(hatch), Optional.empty())));
		double share = 0.3 / 0.6 * Math.PI * 9 / 100;
		assertEquals(share, Raster.ink(image), share * 0.06);
	}

	@Test
	void theInnermostNamedGroupUnderThePointIsFound() {
		Element dot = Group.named("dot", "a dot", List.of(new Drawn(new Circle(0, 0, 1), Style.filled(Ink.BLACK))));
		Group outer = new Group(Optional.of("outer"), Optional.empty(),
				Transform.scaling(2, 20, 10),
				List.of(new Drawn(new Rectangle(-5, -5, 10, 10), Style.filled(Ink.WHITE)), dot));
		Scene scene = new Scene("x", 40, 20, List.of(outer));
		assertEquals("dot", Hits.at(scene, 21.5, 10, 0.1).orElseThrow().id().orElseThrow());
		assertEquals("outer", Hits.at(scene, 25, 10, 0.1).orElseThrow().id().orElseThrow());
		assertTrue(Hits.at(scene, 35, 10, 0.1).isEmpty());
	}
}
