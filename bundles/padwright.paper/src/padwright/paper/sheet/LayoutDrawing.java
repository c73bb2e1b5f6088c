package padwright.paper.sheet;

import java.util.ArrayList;
import java.util.List;

import padwright.drawing.font.DejaVuMetrics;
import padwright.drawing.scene.Bounds;
import padwright.drawing.scene.Element;
import padwright.drawing.scene.Group;
import padwright.drawing.scene.Scene;
import padwright.paper.page.Part;
import padwright.paper.page.Typesetter;

/** What a layout sheet draws of the instrument, in life size on one plane: for drawing programs. */
public final class LayoutDrawing {

	private static final double GAP = 20;
	private static final double LIFE_SIZE = 1;
	/** Below the joints, mm. */
	private static final double SECTIONS_WIDTH = 420;

	private final Typesetter typesetter = new Typesetter(new DejaVuMetrics());
	private final LayoutSheet sheet;

	private LayoutDrawing(LayoutSheet sheet) {
		this.sheet = sheet;
	}

	/** All joints from the side and unrolled, side by side, and below them a section through every hole. */
	public static Scene of(LayoutSheet sheet) {
		return new LayoutDrawing(sheet).scene();
	}

	private Scene scene() {
		List<Element> elements = new ArrayList<>();
		double right = GAP;
		double bottom = GAP;
		for (JointDrawing joint : joints()) {
			Bounds size = joint.size();
			elements.addAll(joint.draw(right));
			right += size.width() + GAP;
			bottom = Math.max(bottom, size.height() + GAP);
		}
		for (Part row : new HoleSections(typesetter, sheet, SECTIONS_WIDTH).parts()) {
			elements.add(Group.of(row.draw(row.height())).at(GAP, bottom));
			bottom += row.height();
		}
		return new Scene(sheet.title(), Math.max(right, SECTIONS_WIDTH + 2 * GAP), bottom + GAP, elements);
	}

	private List<JointDrawing> joints() {
		return sheet.drawnJoints().stream()
				.map(joint -> new JointDrawing(typesetter, sheet, joint, new DrawingScale(LIFE_SIZE)))
				.filter(joint -> !joint.isEmpty()).toList();
	}
}
