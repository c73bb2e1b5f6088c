package padwright.drawing.java2d;

import java.awt.Graphics2D;
import java.awt.RenderingHints;

import padwright.drawing.scene.Scene;

/** Paints scenes on a screen or an image. */
public final class Java2DPainter {

	private Java2DPainter() {
	}

	/**
	 * Paints {@code scene} with its corner at the origin of {@code graphics}, whose state is left as it was.
	 *
	 * @param pixelsPerMillimetre how large
	 */
	public static void paint(Graphics2D graphics, Scene scene, double pixelsPerMillimetre) {
		Graphics2D own = (Graphics2D) graphics.create();
		try {
			own.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
			own.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
			own.setRenderingHint(RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
			own.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
			own.scale(pixelsPerMillimetre, pixelsPerMillimetre);
			Java2DElements elements = new Java2DElements(own);
			scene.elements().forEach(element -> element.accept(elements));
		} finally {
			own.dispose();
		}
	}
}
