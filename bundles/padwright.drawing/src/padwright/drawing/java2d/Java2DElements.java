package padwright.drawing.java2d;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;

import javax.imageio.ImageIO;

import padwright.drawing.font.DejaVuMetrics;
import padwright.drawing.scene.Bounds;
import padwright.drawing.scene.Drawn;
import padwright.drawing.scene.ElementVisitor;
import padwright.drawing.scene.Fill;
import padwright.drawing.scene.FontMetrics;
import padwright.drawing.scene.Geometry;
import padwright.drawing.scene.Group;
import padwright.drawing.scene.Hatch;
import padwright.drawing.scene.Ink;
import padwright.drawing.scene.Line;
import padwright.drawing.scene.Picture;
import padwright.drawing.scene.SolidFill;
import padwright.drawing.scene.Stroke;
import padwright.drawing.scene.Text;
import padwright.drawing.scene.Transform;

/** Paints each element on a graphics context whose unit is the millimetre. */
final class Java2DElements implements ElementVisitor {

	private final Graphics2D graphics;
	private final FontMetrics metrics = new DejaVuMetrics();

	Java2DElements(Graphics2D graphics) {
		this.graphics = graphics;
	}

	@Override
	public void visit(Drawn drawn) {
		Shape outline = Outlines.of(drawn.geometry());
		drawn.style().fill().ifPresent(fill -> fill(fill, drawn.geometry(), outline));
		drawn.style().stroke().ifPresent(stroke -> stroke(stroke, outline));
	}

	private void fill(Fill fill, Geometry geometry, Shape outline) {
		if (fill instanceof SolidFill solid) {
			graphics.setColor(colour(solid.ink()));
			graphics.fill(outline);
		} else if (fill instanceof Hatch hatch) {
			hatch(hatch, geometry, outline);
		}
	}

	private void hatch(Hatch hatch, Geometry geometry, Shape outline) {
		graphics.setColor(Color.WHITE);
		graphics.fill(outline);
		Shape clip = graphics.getClip();
		graphics.clip(outline);
		for (Line line : hatch.over(geometry.bounds())) {
			stroke(hatch.lines(), Outlines.of(line));
		}
		graphics.setClip(clip);
	}

	private void stroke(Stroke stroke, Shape outline) {
		graphics.setColor(colour(stroke.ink()));
		float[] dash = stroke.dash().isEmpty() ? null : stroke.dashArray();
		graphics.setStroke(new BasicStroke((float) stroke.width(), BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1,
				dash, 0));
		graphics.draw(outline);
	}

	@Override
	public void visit(Text text) {
		double left = text.x() - text.anchor().fraction() * metrics.width(text);
		graphics.setColor(colour(text.ink()));
		graphics.setFont(AwtFonts.of(text.face()).deriveFont((float) text.size()));
		graphics.drawString(text.text(), (float) left, (float) text.baseline());
	}

	@Override
	public void visit(Picture picture) {
		try {
			Bounds bounds = picture.bounds();
			BufferedImage pixels = ImageIO.read(new ByteArrayInputStream(picture.data().file()));
			AffineTransform place = AffineTransform.getTranslateInstance(bounds.left(), bounds.top());
			place.scale(bounds.width() / pixels.getWidth(), bounds.height() / pixels.getHeight());
			graphics.drawImage(pixels, place, null);
		} catch (IOException spoilt) {
			throw new UncheckedIOException(spoilt);
		}
	}

	@Override
	public void visit(Group group) {
		AffineTransform before = graphics.getTransform();
		graphics.transform(map(group.transform()));
		group.elements().forEach(element -> element.accept(this));
		graphics.setTransform(before);
	}

	static AffineTransform map(Transform map) {
		return new AffineTransform(map.xx(), map.yx(), map.xy(), map.yy(), map.dx(), map.dy());
	}

	private static Color colour(Ink ink) {
		return new Color(ink.red(), ink.green(), ink.blue());
	}
}
