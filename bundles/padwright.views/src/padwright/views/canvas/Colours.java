package padwright.views.canvas;

import org.eclipse.swt.graphics.Color;

import padwright.drawing.scene.Ink;

/** Inks as colours of a window. */
public final class Colours {

	private Colours() {
	}

	/** Takes nothing that would have to be given back. */
	public static Color of(Ink ink) {
		return new Color(ink.red(), ink.green(), ink.blue());
	}
}
