package padwright.drawing;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.util.Arrays;
import java.util.List;

import padwright.drawing.java2d.Java2DPainter;
import padwright.drawing.scene.Element;
import padwright.drawing.scene.Scene;

/** Drawings as pixels, for tests: 20 to the millimetre. */
public final class Raster {

	private static final int PIXELS_PER_MILLIMETRE = 20;

	private Raster() {
	}

	/** The elements on white paper of a size in mm. */
	public static BufferedImage paint(int width, int height, Element... elements) {
		BufferedImage image = new BufferedImage(width * PIXELS_PER_MILLIMETRE, height * PIXELS_PER_MILLIMETRE,
				BufferedImage.TYPE_BYTE_GRAY);
		Graphics2D graphics = image.createGraphics();
		graphics.setColor(Color.WHITE);
		graphics.fillRect(0, 0, image.getWidth(), image.getHeight());
		Java2DPainter.paint(graphics, new Scene("test", width, height, List.of(elements)), PIXELS_PER_MILLIMETRE);
		graphics.dispose();
		return image;
	}

	public static boolean same(BufferedImage one, BufferedImage other) {
		return Arrays.equals(greys(one), greys(other));
	}

	/** How black the image is, 0 for white paper to 1. */
	public static double ink(BufferedImage image) {
		return 1 - Arrays.stream(greys(image)).average().orElseThrow() / 255;
	}

	private static int[] greys(BufferedImage image) {
		return image.getRaster().getPixels(0, 0, image.getWidth(), image.getHeight(), (int[]) null);
	}
}
