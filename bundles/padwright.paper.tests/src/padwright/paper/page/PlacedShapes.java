package padwright.paper.page;

import java.util.ArrayList;
import java.util.List;

import padwright.drawing.scene.Drawn;
import padwright.drawing.scene.Element;
import padwright.drawing.scene.ElementVisitor;
import padwright.drawing.scene.Geometry;
import padwright.drawing.scene.Group;
import padwright.drawing.scene.Picture;
import padwright.drawing.scene.Scene;
import padwright.drawing.scene.Text;
import padwright.drawing.scene.Transform;

/** The shapes of one kind on a page, each with the map from its own coordinates to the page's. */
public final class PlacedShapes<T extends Geometry> implements ElementVisitor {

	/** A shape and where it lies. */
	public record Placed<T>(T shape, Transform map) {

		public double x(double x, double y) {
			return map.xOf(x, y);
		}

		public double y(double x, double y) {
			return map.yOf(x, y);
		}
	}

	private final Class<T> kind;
	private final List<Placed<T>> found = new ArrayList<>();
	private Transform map = Transform.NONE;

	private PlacedShapes(Class<T> kind) {
		this.kind = kind;
	}

	public static <T extends Geometry> List<Placed<T>> in(Scene page, Class<T> kind) {
		PlacedShapes<T> shapes = new PlacedShapes<>(kind);
		page.elements().forEach(element -> element.accept(shapes));
		return shapes.found;
	}

	@Override
	public void visit(Drawn drawn) {
		if (kind.isInstance(drawn.geometry())) {
			found.add(new Placed<>(kind.cast(drawn.geometry()), map));
		}
	}

	@Override
	public void visit(Text text) {
		// Not a shape.
	}

	@Override
	public void visit(Picture picture) {
		// Not a shape.
	}

	@Override
	public void visit(Group group) {
		Transform around = map;
		map = around.after(group.transform());
		for (Element element : group.elements()) {
			element.accept(this);
		}
		map = around;
	}
}
