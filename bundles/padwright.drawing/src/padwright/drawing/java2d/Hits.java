package padwright.drawing.java2d;

import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.util.Optional;

import padwright.drawing.font.DejaVuMetrics;
import padwright.drawing.scene.Bounds;
import padwright.drawing.scene.Drawn;
import padwright.drawing.scene.Element;
import padwright.drawing.scene.ElementVisitor;
import padwright.drawing.scene.FontMetrics;
import padwright.drawing.scene.Group;
import padwright.drawing.scene.Picture;
import padwright.drawing.scene.Scene;
import padwright.drawing.scene.Text;

/** Finds what lies under a point. */
public final class Hits implements ElementVisitor {

	private final FontMetrics metrics = new DejaVuMetrics();
	private final Rectangle2D spot;
	private AffineTransform map = new AffineTransform();
	private Optional<Group> around = Optional.empty();
	private Optional<Group> hit = Optional.empty();

	private Hits(Rectangle2D spot) {
		this.spot = spot;
	}

	/**
	 * The topmost named group that has something within {@code reach} of a point; the innermost where groups nest.
	 *
	 * @param x mm from the left of the scene
	 * @param y mm from its top
	 * @param reach mm, more than 0
	 */
	public static Optional<Group> at(Scene scene, double x, double y, double reach) {
		Hits hits = new Hits(new Rectangle2D.Double(x - reach, y - reach, 2 * reach, 2 * reach));
		for (Element element : scene.elements()) {
			element.accept(hits);
		}
		return hits.hit;
	}

	@Override
	public void visit(Drawn drawn) {
		touch(Outlines.of(drawn.geometry()));
	}

	@Override
	public void visit(Text text) {
		double width = metrics.width(text);
		touch(new Rectangle2D.Double(text.x() - text.anchor().fraction() * width, text.baseline() - text.size(), width,
				text.size() * 1.2));
	}

	@Override
	public void visit(Picture picture) {
		Bounds bounds = picture.bounds();
		touch(new Rectangle2D.Double(bounds.left(), bounds.top(), bounds.width(), bounds.height()));
	}

	private void touch(Shape shape) {
		if (around.isPresent() && map.createTransformedShape(shape).intersects(spot)) {
			hit = around;
		}
	}

	@Override
	public void visit(Group group) {
		AffineTransform mapOutside = map;
		Optional<Group> outside = around;
		map = new AffineTransform(mapOutside);
		map.concatenate(Java2DElements.map(group.transform()));
		around = group.id().isPresent() ? Optional.of(group) : outside;
		group.elements().forEach(element -> element.accept(this));
		map = mapOutside;
		around = outside;
	}
}
