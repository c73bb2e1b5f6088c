package padwright.paper.sheet;

import java.util.ArrayList;
import java.util.List;

import padwright.drawing.scene.Bounds;
import padwright.drawing.scene.Element;
import padwright.drawing.scene.Face;
import padwright.drawing.scene.Group;
import padwright.paper.page.Typesetter;

/** One joint: from the side, and beside it at the same scale unrolled if anything is on it. */
final class JointDrawing {

	/** A short joint alone has room for its name, mm. */
	private static final double NARROWEST = 30;

	private final Typesetter typesetter;
	private final SheetJoint joint;
	private final SideView side;
	private final JointMap map;

	JointDrawing(Typesetter typesetter, LayoutSheet sheet, SheetJoint joint, DrawingScale scale) {
		this.typesetter = typesetter;
		this.joint = joint;
		this.side = new SideView(sheet, joint, scale);
		this.map = new JointMap(typesetter, sheet, joint, scale);
	}

	/** Whether nothing is on the joint, and nothing is known of it. */
	boolean isEmpty() {
		return map.isEmpty() && side.isEmpty();
	}

	/** Whether no hole is on it. */
	boolean isBare() {
		return map.isEmpty();
	}

	/** Mm on paper. */
	Bounds size() {
		return map.isEmpty() ? new Bounds(0, 0, Math.max(NARROWEST, side.width()), side.height())
				: new Bounds(0, 0, side.width() + map.width(), Math.max(map.height(), side.height()));
	}

	List<Element> draw(double left) {
		List<Element> elements = new ArrayList<>();
		elements.add(Group.named("side", side.description(), side.draw()).at(left, 0));
		if (map.isEmpty()) {
			elements.add(Group.of(List.of(typesetter.line(joint.name(), 0, JointMap.HEADING, Face.BOLD, JointMap.HEADING,
					size().width()))).at(left, 0));
		} else {
			elements.add(Group.named("map", map.description(), map.draw()).at(left + side.width(), 0));
		}
		return elements;
	}
}
