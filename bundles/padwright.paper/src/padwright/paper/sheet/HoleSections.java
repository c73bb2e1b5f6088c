package padwright.paper.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

import padwright.drawing.scene.Element;
import padwright.drawing.scene.Face;
import padwright.drawing.scene.Group;
import padwright.drawing.scene.Text;
import padwright.paper.page.FixedPart;
import padwright.paper.page.Part;
import padwright.paper.page.Typesetter;
import padwright.paper.words.Messages;

/**
 * A section across the tube through every hole of which the diameter is known, all at one scale.
 *
 * @param width of the page between its margins, mm
 */
record HoleSections(Typesetter typesetter, LayoutSheet sheet, double width) {

	private static final double GAP = 3;
	private static final double TITLE = 4.2;
	private static final double SIZE = 2.7;
	private static final double LINE = 3.4;
	/** Of sizes below a section. */
	private static final int MOST_LINES = 3;

	List<Part> parts() {
		List<HoleSection> sections = sections();
		DrawingScale scale = DrawingScale.fitting(
				sections.stream().mapToDouble(HoleSection::reach).max().orElse(1), HoleSection.ROOM);
		int inARow = (int) ((width + GAP) / (HoleSection.CELL + GAP));
		List<Part> parts = new ArrayList<>();
		for (int first = 0; first < sections.size(); first += inARow) {
			parts.add(row(sections.subList(first, Math.min(first + inARow, sections.size())), first == 0, scale));
		}
		return parts;
	}

	/** Those with keys by the number of the key, then those that fingers cover. */
	private List<HoleSection> sections() {
		Stream<HoleSection> ofKeys = IntStream.range(0, sheet.keys().size())
				.filter(key -> sheet.keys().get(key).hole().isPresent())
				.mapToObj(key -> HoleSection.of(sheet.keys().get(key), key + 1, sheet.joints()));
		Stream<HoleSection> ofFingers = sheet.fingerHoles().stream().filter(hole -> hole.diameter().isPresent())
				.map(hole -> HoleSection.of(hole, sheet.joints()));
		return Stream.concat(ofKeys, ofFingers).toList();
	}

	private Part row(List<HoleSection> sections, boolean titled, DrawingScale scale) {
		List<Element> elements = new ArrayList<>();
		double top = 1;
		if (titled) {
			elements.add(Text.of(Messages.of("sheet.sections", scale), 0, TITLE * 1.4, Face.BOLD, TITLE));
			top = TITLE * 2;
		}
		double high = sections.stream().mapToDouble(section -> section.above(scale)).max().orElse(0);
		double low = sections.stream().mapToDouble(section -> section.below(scale)).max().orElse(0);
		for (int index = 0; index < sections.size(); index++) {
			HoleSection section = sections.get(index);
			List<Element> cell = new ArrayList<>(section.draw(scale));
			cell.addAll(texts(section, low + LINE));
			elements.add(Group.named("section", Messages.of("sheet.section", section.label()), cell)
					.at(index * (HoleSection.CELL + GAP), top + high));
		}
		return new FixedPart(top + high + low + (1 + MOST_LINES) * LINE + GAP, elements);
	}

	private List<Element> texts(HoleSection section, double y) {
		List<Element> elements = new ArrayList<>();
		elements.add(typesetter.line(section.label(), 0, y, Face.CONDENSED_BOLD, SIZE, HoleSection.CELL));
		List<String> lines = typesetter.wrap(section.sizes(), Face.CONDENSED, SIZE, HoleSection.CELL, MOST_LINES);
		for (int index = 0; index < lines.size(); index++) {
			elements.add(Text.of(lines.get(index), 0, y + (index + 1) * LINE, Face.CONDENSED, SIZE));
		}
		return elements;
	}
}
