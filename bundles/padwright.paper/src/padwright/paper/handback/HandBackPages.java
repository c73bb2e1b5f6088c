package padwright.paper.handback;

import java.util.ArrayList;
import java.util.List;

import padwright.drawing.font.DejaVuMetrics;
import padwright.drawing.scene.Face;
import padwright.drawing.scene.Scene;
import padwright.paper.page.Column;
import padwright.paper.page.FootRule;
import padwright.paper.page.PageHead;
import padwright.paper.page.PageSeries;
import padwright.paper.page.PaperSize;
import padwright.paper.page.Paragraphs;
import padwright.paper.page.Part;
import padwright.paper.page.Typesetter;
import padwright.paper.words.Messages;

/** Lays a hand-back page out in type that is easy to read. */
public final class HandBackPages {

	private static final double HEADING = 4.8;
	private static final double TEXT = 3.7;

	private final HandBack handBack;
	private final PaperSize paper;
	private final double width;
	private final Typesetter typesetter = new Typesetter(new DejaVuMetrics());

	public HandBackPages(HandBack handBack, PaperSize paper) {
		this.handBack = handBack;
		this.paper = paper;
		this.width = PageSeries.width(paper);
	}

	/** One page, or as many as the words take. */
	public List<Scene> pages() {
		PageSeries series = new PageSeries(paper, new PageHead(handBack.head(), typesetter, width), this::foot);
		List<Part> parts = new ArrayList<>();
		Paragraphs paragraphs = new Paragraphs(typesetter, width, HEADING, TEXT);
		handBack.sections().forEach(section -> parts.addAll(paragraphs.parts(section.heading(), section.paragraphs())));
		return series.pages(handBack.title(), parts, false);
	}

	private Part foot(int page, int pages) {
		Column column = new Column(typesetter, 0, 1.2, width);
		column.paragraph(Messages.of("back.foot"), Face.CONDENSED, FootRule.SIZE * 1.1);
		return FootRule.around(column.elements(), column.y(), width, page, pages);
	}
}
