package padwright.views.canvas;

import java.io.ByteArrayInputStream;
import java.util.function.Consumer;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.LineAttributes;
import org.eclipse.swt.graphics.Path;

import padwright.drawing.font.DejaVuOutlines;
import padwright.drawing.scene.Bounds;
import padwright.drawing.scene.Drawn;
import padwright.drawing.scene.ElementVisitor;
import padwright.drawing.scene.Fill;
import padwright.drawing.scene.Geometry;
import padwright.drawing.scene.Group;
import padwright.drawing.scene.Hatch;
import padwright.drawing.scene.Ink;
import padwright.drawing.scene.Line;
import padwright.drawing.scene.PathSink;
import padwright.drawing.scene.Picture;
import padwright.drawing.scene.Scene;
import padwright.drawing.scene.SolidFill;
import padwright.drawing.scene.Stroke;
import padwright.drawing.scene.Text;
import padwright.drawing.scene.Transform;
import padwright.views.Palette;
import padwright.views.scenes.Viewport;

/** Paints scenes in a window or on a printer. All is outlines, text too, so that it is as sharp as the pixels allow. */
public final class ScenePainter implements ElementVisitor {

	/** Lines up to this many points wide are drawn to scale. */
	private static final double FULL_WIDTH = 1.5;
	private static final double BEYOND_FULL_WIDTH = 0.25;

	private final GC gc;
	private final Palette palette;
	private Transform map;

	private ScenePainter(GC gc, Palette palette, Transform map) {
		this.gc = gc;
		this.palette = palette;
		this.map = map;
	}

	/** Paints a scene in the colours of a palette, as a viewport places it. */
	public static void paint(GC gc, Scene scene, Palette palette, Viewport view) {
		gc.setAntialias(SWT.ON);
		ScenePainter painter = new ScenePainter(gc, palette,
				Transform.scaling(view.scale(), view.left(), view.top()));
		scene.elements().forEach(element -> element.accept(painter));
	}

	@Override
	public void visit(Drawn drawn) {
		outlined(drawn.geometry()::trace, path -> {
			drawn.style().fill().ifPresent(fill -> fill(fill, drawn.geometry(), path));
			drawn.style().stroke().ifPresent(stroke -> stroke(stroke, path));
		});
	}

	private void outlined(Consumer<PathSink> shape, Consumer<Path> use) {
		Outline outline = new Outline(gc.getDevice(), map);
		try {
			shape.accept(outline);
			use.accept(outline.path());
		} finally {
			outline.path().dispose();
		}
	}

	private void fill(Fill fill, Geometry geometry, Path path) {
		gc.setFillRule(SWT.FILL_EVEN_ODD);
		gc.setBackground(Colours.of(palette.shown(fill instanceof SolidFill solid ? solid.ink() : Ink.WHITE)));
		gc.fillPath(path);
		if (fill instanceof Hatch hatch) {
			gc.setClipping(path);
			for (Line line : hatch.over(geometry.bounds())) {
				outlined(line::trace, each -> stroke(hatch.lines(), each));
			}
			gc.setClipping((Path) null);
		}
	}

	private void stroke(Stroke stroke, Path path) {
		double scale = Math.sqrt(Math.abs(map.xx() * map.yy() - map.xy() * map.yx()));
		LineAttributes line = new LineAttributes(width(stroke.width() * scale), SWT.CAP_FLAT, SWT.JOIN_ROUND);
		if (!stroke.dash().isEmpty()) {
			line.style = SWT.LINE_CUSTOM;
			line.dash = stroke.dashArray();
			for (int index = 0; index < line.dash.length; index++) {
				line.dash[index] *= (float) scale;
			}
		}
		gc.setLineAttributes(line);
		gc.setForeground(Colours.of(palette.shown(stroke.ink())));
		gc.drawPath(path);
	}

	/** Lines that are drawn for paper become clumsy when they are enlarged as much as all else. */
	private static float width(double points) {
		return (float) (points <= FULL_WIDTH ? points : FULL_WIDTH + (points - FULL_WIDTH) * BEYOND_FULL_WIDTH);
	}

	@Override
	public void visit(Text text) {
		outlined(sink -> DejaVuOutlines.trace(text, sink), path -> {
			gc.setFillRule(SWT.FILL_WINDING);
			gc.setBackground(Colours.of(palette.shown(text.ink())));
			gc.fillPath(path);
		});
	}

	/** Upright, as all pictures are. */
	@Override
	public void visit(Picture picture) {
		Bounds bounds = picture.bounds();
		int left = (int) Math.round(map.xOf(bounds.left(), bounds.top()));
		int top = (int) Math.round(map.yOf(bounds.left(), bounds.top()));
		int width = (int) Math.round(map.xOf(bounds.right(), bounds.bottom())) - left;
		int height = (int) Math.round(map.yOf(bounds.right(), bounds.bottom())) - top;
		Image image = new Image(gc.getDevice(), new ByteArrayInputStream(picture.data().file()));
		try {
			gc.drawImage(image, 0, 0, picture.data().width(), picture.data().height(), left, top, Math.max(1, width),
					Math.max(1, height));
		} finally {
			image.dispose();
		}
	}

	@Override
	public void visit(Group group) {
		Transform before = map;
		map = before.after(group.transform());
		group.elements().forEach(element -> element.accept(this));
		map = before;
	}
}
