package padwright.drawing;

import java.util.ArrayList;
import java.util.List;

import padwright.drawing.scene.Bounds;
import padwright.drawing.scene.Drawn;
import padwright.drawing.scene.Element;
import padwright.drawing.scene.ElementVisitor;
import padwright.drawing.scene.FontMetrics;
import padwright.drawing.scene.Group;
import padwright.drawing.scene.Picture;
import padwright.drawing.scene.Text;
import padwright.drawing.scene.Transform;

/** Where the texts of a drawing lie, for tests. Groups may move and enlarge, not turn. */
public final class TextBoxes implements ElementVisitor {

	private final FontMetrics metrics;
	private final List<Bounds> boxes = new ArrayList<>();
	private Transform map = Transform.NONE;

	private TextBoxes(FontMetrics metrics) {
		this.metrics = metrics;
	}

	/** A box from the baseline to the top of the capitals for each text. */
	public static List<Bounds> of(List<? extends Element> elements, FontMetrics metrics) {
		TextBoxes boxes = new TextBoxes(metrics);
		elements.forEach(element -> element.accept(boxes));
		return boxes.boxes;
	}

	@Override
	public void visit(Drawn drawn) {
		// not a text
	}

	@Override
	public void visit(Text text) {
		double width = metrics.width(text);
		double left = text.x() - text.anchor().fraction() * width;
		double height = FontMetrics.CAPITAL_HEIGHT * text.size();
		double top = text.baseline() - height;
		boxes.add(new Bounds(map.xOf(left, top), map.yOf(left, top), width * map.xx(), height * map.yy()));
	}

	@Override
	public void visit(Picture picture) {
		// not a text
	}

	@Override
	public void visit(Group group) {
		Transform outside = map;
		map = outside.after(group.transform());
		group.elements().forEach(element -> element.accept(this));
		map = outside;
	}
}
