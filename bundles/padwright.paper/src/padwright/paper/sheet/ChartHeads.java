package padwright.paper.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import padwright.drawing.scene.Element;
import padwright.drawing.scene.Face;
import padwright.drawing.scene.Group;
import padwright.drawing.scene.Text;
import padwright.drawing.scene.Transform;
import padwright.paper.page.Typesetter;

/**
 * Words over the columns of a chart: upright where all fit over their columns, else those that do not stand on end.
 *
 * @param width of each column, mm
 */
record ChartHeads(Typesetter typesetter, List<String> words, Face face, double width) {

	private static final double SIZE = 2.6;
	/** Space between a word and the rule below, mm. */
	private static final double APART = 0.8;

	private double size() {
		return Math.min(SIZE, width * 0.85);
	}

	private double length(String word) {
		return typesetter.metrics().width(word, face, size());
	}

	private boolean isUpright(String word) {
		return length(word) <= width - 0.3;
	}

	/** Room for the words, mm. */
	double height() {
		return words.stream().filter(word -> !isUpright(word)).mapToDouble(this::length).reduce(SIZE, Math::max)
				+ 2 * APART;
	}

	/** @param left of the first column, mm */
	List<Element> draw(double left, double bottom) {
		List<Element> elements = new ArrayList<>();
		for (int column = 0; column < words.size(); column++) {
			double middle = left + (column + 0.5) * width;
			String word = words.get(column);
			Text text = Text.centred(word, 0, 0, face, size());
			double up = isUpright(word) ? size() / 2 : length(word) / 2;
			Transform turn = isUpright(word) ? Transform.NONE : Transform.rotation(-90);
			elements.add(new Group(Optional.empty(), Optional.empty(), turn, List.of(text))
					.at(middle, bottom - APART - up));
		}
		return elements;
	}
}
