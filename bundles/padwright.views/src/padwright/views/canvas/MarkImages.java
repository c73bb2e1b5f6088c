package padwright.views.canvas;

import java.util.HashMap;
import java.util.Map;
import java.util.function.BiFunction;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageGcDrawer;
import org.eclipse.swt.widgets.Widget;

import padwright.drawing.scene.Scene;
import padwright.views.Palette;
import padwright.views.scenes.Viewport;

/**
 * Marks as images, drawn anew for every zoom of a display. Gone with their owner.
 *
 * @param <K> what there is a mark of each of
 */
public final class MarkImages<K> {

	private static final int SIZE = 16;

	private final Widget owner;
	private final BiFunction<K, Palette, Scene> drawing;
	private final Map<K, Image> images = new HashMap<>();
	private Palette palette;

	public MarkImages(Widget owner, Palette palette, BiFunction<K, Palette, Scene> drawing) {
		this.owner = owner;
		this.drawing = drawing;
		this.palette = palette;
		owner.addListener(SWT.Dispose, event -> dispose());
	}

	/** Draws all marks anew. */
	public void setPalette(Palette palette) {
		this.palette = palette;
		dispose();
	}

	public Image of(K mark) {
		return images.computeIfAbsent(mark, this::draw);
	}

	private Image draw(K mark) {
		Palette colours = palette;
		Scene scene = drawing.apply(mark, colours);
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
