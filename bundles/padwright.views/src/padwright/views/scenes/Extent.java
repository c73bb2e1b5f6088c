package padwright.views.scenes;

import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;

import padwright.drawing.font.DejaVuMetrics;
import padwright.drawing.scene.Bounds;
import padwright.drawing.scene.Drawn;
import padwright.drawing.scene.Element;
import padwright.drawing.scene.ElementVisitor;
import padwright.drawing.scene.Group;
import padwright.drawing.scene.Picture;
import padwright.drawing.scene.Text;
import padwright.drawing.scene.Transform;

/** Finds the room that elements take, with the innermost named group around each. */
public final class Extent implements ElementVisitor {

	private final DejaVuMetrics metrics = new DejaVuMetrics();
	private final BiConsumer<Optional<Group>, Bounds> found;
	private Transform map = Transform.NONE;
	private Optional<Group> around = Optional.empty();

	/** @param found told of every outline and text, in drawing order */
	Extent(BiConsumer<Optional<Group>, Bounds> found) {
		this.found = found;
	}

	/** A rectangle that holds them all; nothing for none. */
	public static Optional<Bounds> of(List<? extends Element> elements) {
		Bounds[] all = new Bounds[1];
		Extent extent = new Extent((group, bounds) -> all[0] = all[0] == null ? bounds : union(all[0], bounds));
		elements.forEach(element -> element.accept(extent));
		return Optional.ofNullable(all[0]);
	}

	@Override
	public void visit(Drawn drawn) {
		add(drawn.geometry().bounds());
	}

	@Override
	public void visit(Text text) {
		double width = metrics.width(text);
		add(new Bounds(text.x() - text.anchor().fraction() * width, text.baseline() - text.size(), width,
				text.size() * 1.2));
	}

	@Override
	public void visit(Picture picture) {
		add(picture.bounds());
	}

	@Override
	public void visit(Group group) {
		Transform outsideMap = map;
		Optional<Group> outside = around;
		map = outsideMap.after(group.transform());
		around = group.id().isPresent() ? Optional.of(group) : outside;
		group.elements().forEach(element -> element.accept(this));
		map = outsideMap;
		around = outside;
	}

	private void add(Bounds own) {
		Bounds one = box(own.left(), own.top(), own.right(), own.bottom());
		found.accept(around, union(one, box(own.right(), own.top(), own.left(), own.bottom())));
	}

	private Bounds box(double x1, double y1, double x2, double y2) {
		double left = Math.min(map.xOf(x1, y1), map.xOf(x2, y2));
		double top = Math.min(map.yOf(x1, y1), map.yOf(x2, y2));
		return new Bounds(left, top, Math.max(map.xOf(x1, y1), map.xOf(x2, y2)) - left,
				Math.max(map.yOf(x1, y1), map.yOf(x2, y2)) - top);
	}

	static Bounds union(Bounds one, Bounds other) {
		double left = Math.min(one.left(), other.left());
		double top = Math.min(one.top(), other.top());
		return new Bounds(left, top, Math.max(one.right(), other.right()) - left,
				Math.max(one.bottom(), other.bottom()) - top);
	}
}
