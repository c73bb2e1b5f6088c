package padwright.paper.sound;

import java.util.ArrayList;
import java.util.List;

import padwright.drawing.font.DejaVuMetrics;
import padwright.drawing.scene.Element;
import padwright.drawing.scene.Face;
import padwright.drawing.scene.Group;
import padwright.drawing.scene.Scene;
import padwright.paper.page.Column;
import padwright.paper.page.FixedPart;
import padwright.paper.page.FootRule;
import padwright.paper.page.PageHead;
import padwright.paper.page.PageSeries;
import padwright.paper.page.PaperSize;
import padwright.paper.page.Part;
import padwright.paper.page.Typesetter;
import padwright.paper.words.Messages;

/** Draws how a scale sounds: cents by note, and below it how strong each note is. */
public final class SoundPages {

	private static final double HEADING = 3.6;
	private static final double TEXT = 2.8;
	private static final double CENTS = 92;
	private static final double DECIBELS = 38;
	private static final double GAP = 6;

	private final SoundSheet sheet;
	private final PaperSize paper;
	private final double width;
	private final Typesetter typesetter = new Typesetter(new DejaVuMetrics());

	public SoundPages(SoundSheet sheet, PaperSize paper) {
		this.sheet = sheet;
		this.paper = paper;
		width = PageSeries.width(paper);
	}

	/** One page. */
	public List<Scene> pages() {
		List<Part> parts = List.of(
				chart(Messages.of("sound.cents"), Messages.of("sound.centsMeans"),
						new SoundChart(sheet.marks(), width).cents(CENTS), CENTS),
				chart(Messages.of("sound.strength"), Messages.of("sound.strengthMeans"),
						new SoundChart(sheet.marks(), width).strengths(DECIBELS), DECIBELS));
		return new PageSeries(paper, new PageHead(sheet.head(), typesetter, width), this::foot)
				.pages(sheet.title(), parts, false);
	}

	private Part chart(String heading, String words, List<Element> chart, double height) {
		Column column = new Column(typesetter, 0, GAP / 2, width);
		column.line(heading, Face.CONDENSED_BOLD, HEADING, 0);
		column.paragraph(words, Face.CONDENSED, TEXT);
		column.space(1.5);
		List<Element> elements = new ArrayList<>(column.elements());
		elements.add(Group.of(chart).at(0, column.y()));
		return new FixedPart(column.y() + height + NoteAxis.NAMES, elements);
	}

	private Part foot(int page, int pages) {
		Column column = new Column(typesetter, 0, 1.2, width);
		column.paragraph(Messages.of("sound.model"), Face.CONDENSED, FootRule.SIZE);
		return FootRule.around(column.elements(), column.y(), width, page, pages);
	}
}
