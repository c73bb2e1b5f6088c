package padwright.paper.sheet;

import java.util.ArrayList;
import java.util.List;

import padwright.drawing.scene.Bounds;
import padwright.drawing.scene.Element;
import padwright.drawing.scene.Group;
import padwright.paper.page.Typesetter;

/** One joint: from the side, and beside it at the same scale unrolled. */
final class JointDrawing {

	private final SideView side;
	private final JointMap map;

	JointDrawing(Typesetter typesetter, LayoutSheet sheet, SheetJoint joint, DrawingScale scale) {
		this.side = new SideView(sheet, joint, scale);
		this.map = new JointMap(typesetter, sheet, joint, scale);
	}

	boolean isEmpty() {
		return map.isEmpty();
	}

	/** Mm on paper. */
	Bounds size() {
		return new Bounds(0, 0, mapLeft() + map.width(), Math.max(map.height(), side.isEmpty() ? 0 : side.height()));
	}

	private double mapLeft() {
		return side.isEmpty() ? 0 : side.width();
	}

	List<Element> draw(double left) {
		List<Element> elements = new ArrayList<>();
		if (!side.isEmpty()) {
			elements.add(Group.named("side", side.description(), side.draw()).at(left, 0));
		}
		elements.add(Group.named("map", map.description(), map.draw()).at(left + mapLeft(), 0));
		return elements;
	}
}
