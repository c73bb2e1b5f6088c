package padwright.paper.money;

import java.util.ArrayList;
import java.util.List;

import padwright.drawing.font.DejaVuMetrics;
import padwright.drawing.scene.Face;
import padwright.drawing.scene.Scene;
import padwright.paper.page.Column;
import padwright.paper.page.FixedPart;
import padwright.paper.page.FootRule;
import padwright.paper.page.PageHead;
import padwright.paper.page.PageSeries;
import padwright.paper.page.PaperSize;
import padwright.paper.page.Paragraphs;
import padwright.paper.page.Part;
import padwright.paper.page.Typesetter;
import padwright.paper.words.Messages;

/** Lays an estimate or an invoice out. A block of lines stays on one page with its sums while a page can hold it. */
public final class MoneyPages {

	private static final double HEADING = 4.8;
	private static final double TEXT = 3.6;

	private final MoneySheet sheet;
	private final PaperSize paper;
	private final double width;
	private final Typesetter typesetter = new Typesetter(new DejaVuMetrics());
	private final MoneyRows rows;
	private final Paragraphs paragraphs;

	public MoneyPages(MoneySheet sheet, PaperSize paper) {
		this.sheet = sheet;
		this.paper = paper;
		this.width = PageSeries.width(paper);
		this.rows = new MoneyRows(typesetter, width);
		this.paragraphs = new Paragraphs(typesetter, width, HEADING, TEXT);
	}

	/** One page, or as many as the lines take. */
	public List<Scene> pages() {
		PageSeries series = new PageSeries(paper, new PageHead(sheet.head(), typesetter, width), this::foot);
		List<Part> parts = new ArrayList<>();
		sheet.before().forEach(section -> parts.addAll(paragraphs.parts(section.heading(), section.lines())));
		sheet.blocks().forEach(block -> parts.addAll(parts(block, series.firstBodyHeight())));
		parts.add(new FixedPart(HEADING * 0.5, List.of()));
		sheet.after().forEach(section -> parts.addAll(paragraphs.parts(section.heading(), section.lines())));
		return series.pages(sheet.title(), parts, false);
	}

	private List<Part> parts(MoneySheet.Block block, double room) {
		List<Part> parts = new ArrayList<>();
		if (!block.heading().isEmpty()) {
			Column column = new Column(typesetter, 0, 0, width);
			column.space(HEADING * 0.7);
			column.line(block.heading(), Face.BOLD, HEADING, 0);
			parts.add(new FixedPart(column.y(), column.elements()));
		}
		parts.add(rows.head(sheet.currency()));
		block.lines().forEach(line -> parts.add(rows.line(line.text(), line.count(), line.each(), line.amount())));
		parts.add(MoneyRows.together(block.totals().stream()
				.map(total -> rows.sum(total.text(), total.amount(), total.isFinal() ? Face.BOLD : Face.REGULAR)).toList()));
		Part whole = MoneyRows.together(parts);
		return whole.height() <= room ? List.of(whole) : parts;
	}

	private Part foot(int page, int pages) {
		Column column = new Column(typesetter, 0, 1.2, width);
		column.paragraph(Messages.of("money.rounding"),
				Face.CONDENSED, FootRule.SIZE);
		return FootRule.around(column.elements(), column.y(), width, page, pages);
	}
}
