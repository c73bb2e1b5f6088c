package padwright.paper.card;

import java.util.ArrayList;
import java.util.List;

import padwright.drawing.scene.Drawn;
import padwright.drawing.scene.Element;
import padwright.drawing.scene.Group;
import padwright.drawing.scene.Ink;
import padwright.drawing.scene.Rectangle;
import padwright.drawing.scene.Style;
import padwright.paper.page.Part;

/** Cells side by side, each in its frame. */
record CellRow(List<KeyCell> cells, double cellWidth) implements Part {

	private static final double FRAME = 0.3;

	@Override
	public double height() {
		return cells.stream().mapToDouble(KeyCell::leastHeight).max().orElseThrow();
	}

	@Override
	public boolean stretches() {
		return true;
	}

	@Override
	public List<Element> draw(double height) {
		List<Element> elements = new ArrayList<>();
		for (int i = 0; i < cells.size(); i++) {
			double left = i * cellWidth;
			elements.add(Group.of(cells.get(i).draw(height)).at(left, 0));
			elements.add(new Drawn(new Rectangle(left, 0, cellWidth, height), Style.stroked(Ink.BLACK, FRAME)));
		}
		return elements;
	}
}
