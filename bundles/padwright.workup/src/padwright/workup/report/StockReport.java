package padwright.workup.report;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

import padwright.workup.parts.ArticleWords;
import padwright.workup.parts.Labels;
import padwright.workup.parts.StockDraw;
import padwright.workup.parts.StockLine;
import padwright.workup.words.Messages;

/** What is drawn from each stock, and what to reorder. */
public final class StockReport {

	private StockReport() {
	}

	public static Report of(List<StockDraw> draws) {
		List<ReportTable> tables = new ArrayList<>();
		draws.forEach(draw -> {
			tables.add(drawn(draw));
			tables.add(reorder(draw));
		});
		return new Report(Messages.of("report.stock.title"), List.of(), tables);
	}

	private static ReportTable drawn(StockDraw draw) {
		List<StockLine> touched = draw.lines().stream().filter(StockLine::isTouched).toList();
		ReportTable.Maker table = new ReportTable.Maker(Messages.of("report.stock.drawn", Labels.of(draw.stock()),
				draw.plans().stream().map(plan -> plan.plan().getName()).collect(Collectors.joining(", "))))
				.words(Messages.of("report.stock.article")).figures(Messages.of("report.stock.onHand"),
						Messages.of("report.stock.taken"), Messages.of("report.stock.wanted"), Messages.of("report.stock.left"))
				.words("");
		touched.forEach(line -> table.row(ArticleWords.of(line.article()),
				line.onHand().map(String::valueOf).orElse(Messages.of("report.stock.notCounted")),
				String.valueOf(line.noted()), String.valueOf(line.wanted()), line.left().map(String::valueOf).orElse(""),
				line.shortage() == 0 ? "" : Messages.of("report.stock.short", line.shortage())));
		table.note(Messages.of("report.stock.more", draw.lines().size() - touched.size()));
		return table.table();
	}

	private static ReportTable reorder(StockDraw draw) {
		if (draw.reorder().isEmpty()) {
			ReportTable.Maker nothing = new ReportTable.Maker("").words(Messages.of("report.stock.reorder"));
			nothing.note(Messages.of("report.stock.enough"));
			return nothing.table();
		}
		ReportTable.Maker table = new ReportTable.Maker("").words(Messages.of("report.stock.reorder"))
				.figures(Messages.of("report.count"), Messages.of("report.each"), Messages.of("report.stock.together"));
		draw.reorder().forEach(line -> table.row(ArticleWords.of(line.article()), String.valueOf(line.shortage()),
				line.article().price().map(Figures::money).orElse(Messages.of("report.stock.noPrice")),
				line.cost().map(Figures::money).orElse("")));
		table.row(Messages.of("report.stock.sum"), "", "", Figures.money(draw.reorderCost()));
		return table.table();
	}
}
