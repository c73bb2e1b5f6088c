package padwright.paper.card;

import java.util.ArrayList;
import java.util.List;

import padwright.drawing.scene.Element;
import padwright.drawing.scene.Face;
import padwright.drawing.scene.Text;
import padwright.paper.page.FixedPart;
import padwright.paper.page.Part;
import padwright.paper.page.TickBoxes;
import padwright.paper.page.Typesetter;
import padwright.paper.words.Messages;

/** The couplings to set, two a line, after the keys. */
final class RegulationParts {

	private static final double HEADING = 4;
	private static final double LINE = 7;
	private static final double SIZE = 3.2;
	private static final double BOX = 4.2;
	private static final double WIDEST_PAIR = 25;
	private static final int IN_A_LINE = 2;

	private final Typesetter typesetter;
	private final double width;
	private double pairWidth;

	RegulationParts(Typesetter typesetter, double width) {
		this.typesetter = typesetter;
		this.width = width;
	}

	List<Part> of(List<CardRegulation> regulations) {
		pairWidth = Math.min(WIDEST_PAIR, regulations.stream()
				.mapToDouble(one -> typesetter.metrics().width(pair(one), Face.CONDENSED_BOLD, SIZE)).max().orElse(0));
		List<Part> parts = new ArrayList<>();
		for (int first = 0; first < regulations.size(); first += IN_A_LINE) {
			List<CardRegulation> line =
					regulations.subList(first, Math.min(first + IN_A_LINE, regulations.size()));
			parts.add(line(line, first == 0));
		}
		return parts;
	}

	/** The first line brings the heading along, so that no page ends with it. */
	private Part line(List<CardRegulation> regulations, boolean isFirst) {
		List<Element> elements = new ArrayList<>();
		double top = isFirst ? HEADING * 1.9 : 1;
		if (isFirst) {
			elements.add(Text.of(Messages.of("card.regulation"), 0, HEADING * 1.35, Face.BOLD, HEADING));
		}
		for (int i = 0; i < regulations.size(); i++) {
			elements.addAll(entry(regulations.get(i), i * width / IN_A_LINE, top));
		}
		return new FixedPart(top + LINE - 1, elements);
	}

	private List<Element> entry(CardRegulation regulation, double left, double top) {
		double baseline = top + BOX * 0.8;
		double pairLeft = left + BOX + 1.5;
		double wordsLeft = pairLeft + pairWidth + 1.5;
		String words = regulation.remedy().isEmpty() ? regulation.found()
				: regulation.found() + ": " + regulation.remedy();
		List<Element> elements = new ArrayList<>();
		elements.addAll(TickBoxes.box(left + 0.2, top, BOX, regulation.done()));
		elements.add(typesetter.line(pair(regulation), pairLeft, baseline, Face.CONDENSED_BOLD, SIZE, pairWidth));
		if (!words.isBlank()) {
			elements.add(typesetter.line(words, wordsLeft, baseline, Face.CONDENSED, SIZE,
					width / IN_A_LINE - (wordsLeft - left) - 2));
		}
		return elements;
	}

	private static String pair(CardRegulation regulation) {
		return Messages.of("card.pair", regulation.driver(), regulation.driven());
	}
}
