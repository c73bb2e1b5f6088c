package padwright.views.canvas;

import java.util.Optional;

import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.Rectangle;

import padwright.drawing.scene.Scene;
import padwright.views.Palette;
import padwright.views.scenes.Viewport;

/** Something on its way over a picture of what stays, which is painted anew only when it is looked at otherwise. */
final class Moving {

	/** What the picture was painted for. */
	private record Look(Palette palette, Viewport view, Rectangle area) {
	}

	private final Scene still;
	private Scene moved;
	private Optional<Look> painted = Optional.empty();
	private Image picture;

	Moving(Scene still, Scene moved) {
		this.still = still;
		this.moved = moved;
	}

	/** The same further on its way. */
	Moving to(Scene further) {
		moved = further;
		return this;
	}

	void paint(GC gc, Palette palette, Viewport view, Rectangle area) {
		Look look = new Look(palette, view, area);
		if (!painted.equals(Optional.of(look))) {
			dispose();
			picture = new Image(gc.getDevice(), Math.max(1, area.width), Math.max(1, area.height));
			GC on = new GC(picture);
			on.setBackground(Colours.of(palette.ground()));
			on.fillRectangle(area);
			ScenePainter.paint(on, still, palette, view);
			on.dispose();
			painted = Optional.of(look);
		}
		gc.drawImage(picture, 0, 0);
		ScenePainter.paint(gc, moved, palette, view);
	}

	void dispose() {
		if (picture != null) {
			picture.dispose();
			picture = null;
		}
	}
}
