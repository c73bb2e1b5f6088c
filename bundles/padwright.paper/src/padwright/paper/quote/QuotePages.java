package padwright.paper.quote;

import java.util.ArrayList;
import java.util.List;

import padwright.drawing.font.DejaVuMetrics;
import padwright.drawing.scene.Face;
import padwright.drawing.scene.Scene;
import padwright.engine.quote.Labour;
import padwright.engine.quote.Quote;
import padwright.paper.money.MoneyRows;
import padwright.paper.page.Column;
import padwright.paper.page.FootRule;
import padwright.paper.page.PageHead;
import padwright.paper.page.PageSeries;
import padwright.paper.page.PaperSize;
import padwright.paper.page.Paragraphs;
import padwright.paper.page.Part;
import padwright.paper.page.Typesetter;
import padwright.paper.words.Messages;
import padwright.workup.report.Figures;

/** Lays a quote out: its lines and sums, what is in no sum, and cautions at the foot. */
public final class QuotePages {

	private static final double HEADING = 4.8;
	private static final double TEXT = 3.6;

	private final QuoteSheet sheet;
	private final PaperSize paper;
	private final double width;
	private final Typesetter typesetter = new Typesetter(new DejaVuMetrics());
	private final MoneyRows rows;
	private final Paragraphs paragraphs;

	public QuotePages(QuoteSheet sheet, PaperSize paper) {
		this.sheet = sheet;
		this.paper = paper;
		this.width = PageSeries.width(paper);
		this.rows = new MoneyRows(typesetter, width);
		this.paragraphs = new Paragraphs(typesetter, width, HEADING, TEXT);
	}

	/** One page, or as many as the lines take. */
	public List<Scene> pages() {
		List<Part> parts = new ArrayList<>();
		parts.add(rows.head(""));
		Quote quote = sheet.quote();
		quote.lines().forEach(line -> parts.add(rows.line(line.article(), String.valueOf(line.count()), line.price(),
				line.amount())));
		parts.add(sums(quote));
		parts.addAll(paragraphs.parts(Messages.of("quote.unpriced"), quote.unpriced()));
		parts.addAll(paragraphs.parts(Messages.of("quote.work"), sheet.work()));
		return new PageSeries(paper, new PageHead(sheet.head(), typesetter, width), this::foot)
				.pages(sheet.title(), parts, false);
	}

	/** The sums stay together. */
	private Part sums(Quote quote) {
		List<Part> sums = new ArrayList<>();
		sums.add(rows.sum(Messages.of("quote.parts"), quote.parts(), Face.REGULAR));
		if (!quote.labour().equals(Labour.NONE)) {
			sums.add(rows.sum(Messages.of("quote.labour", Figures.plain(quote.labour().minutes()),
					Figures.money(quote.labour().rate()), quote.labour().minutes()), quote.labour().amount(), Face.REGULAR));
		}
		sums.add(rows.sum(Messages.of("money.net"), quote.net(), Face.REGULAR));
		sums.add(rows.sum(Messages.of("money.tax", Figures.plain(quote.taxPercent())), quote.tax(), Face.REGULAR));
		sums.add(rows.sum(Messages.of("money.total"), quote.total(), Face.BOLD));
		return MoneyRows.together(sums);
	}

	private Part foot(int page, int pages) {
		Column column = new Column(typesetter, 0, 1.2, width);
		column.paragraph(Messages.of("quote.currency") + " " + Messages.of("money.rounding"), Face.CONDENSED, FootRule.SIZE);
		sheet.cautions().forEach(text -> column.paragraph(text, Face.CONDENSED, FootRule.SIZE));
		return FootRule.around(column.elements(), column.y(), width, page, pages);
	}
}
