package padwright.views.map;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;

import padwright.drawing.font.DejaVuMetrics;
import padwright.drawing.scene.Element;
import padwright.drawing.scene.Face;
import padwright.drawing.scene.Group;
import padwright.drawing.scene.Text;
import padwright.views.Palette;

/**
 * What the marks mean, in as many lines as it takes.
 *
 * @param width of a line, mm
 */
record Legend(Collection<KeyState> states, Palette palette, double width) {

	private static final double SIZE = 3.6;
	private static final double MARK = 1.7;
	private static final double LINE = 6;

	Group draw() {
		List<Element> elements = new ArrayList<>();
		double x = 0;
		double y = 2;
		for (KeyState state : states) {
			if (state == KeyState.DRAWN || state == KeyState.ABSENT) {
				continue;
			}
			double wide = 4.5 + new DejaVuMetrics().width(state.inWords(), Face.REGULAR, SIZE);
			if (x > 0 && x + wide > width) {
				x = 0;
				y += LINE;
			}
			elements.addAll(new StateMark(state, x + MARK, y, MARK).draw(palette));
			elements.add(Text.of(state.inWords(), x + 4.5, y + 1.3, Face.REGULAR, SIZE).in(palette.quiet()));
			x += wide + 5;
		}
		return Group.of(elements);
	}
}
