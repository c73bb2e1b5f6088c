package padwright.views.canvas;

import java.util.EnumMap;
import java.util.Map;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageGcDrawer;
import org.eclipse.swt.widgets.Widget;

import padwright.drawing.scene.Scene;
import padwright.views.Palette;
import padwright.views.map.KeyState;
import padwright.views.map.StateMarks;
import padwright.views.scenes.Viewport;

/** The marks of states as images, drawn anew for every zoom of a display. Gone with their owner. */
public final class MarkImages {

	private static final int SIZE = 16;

	private final Widget owner;
	private final Map<KeyState, Image> images = new EnumMap<>(KeyState.class);
	private Palette palette;

	public MarkImages(Widget owner, Palette palette) {
		this.owner = owner;
		this.palette = palette;
		owner.addListener(SWT.Dispose, event -> dispose());
	}

	/** Draws all marks anew. */
	public void setPalette(Palette palette) {
		this.palette = palette;
		dispose();
	}

	public Image of(KeyState state) {
		return images.computeIfAbsent(state, this::draw);
	}

	private Image draw(KeyState state) {
		Palette colours = palette;
		Scene scene = StateMarks.draw(state, colours);
		return new Image(owner.getDisplay(), new ImageGcDrawer() {

			@Override
			public void drawOn(GC gc, int width, int height) {
				ScenePainter.paint(gc, scene, colours, Viewport.whole(scene, width, height));
			}

			/** Else the mark stands in a square of another colour, in a selected row and while the theme changes. */
			@Override
			public int getGcStyle() {
				return SWT.TRANSPARENT;
			}
		}, SIZE, SIZE);
	}

	private void dispose() {
		images.values().forEach(Image::dispose);
		images.clear();
	}
}
