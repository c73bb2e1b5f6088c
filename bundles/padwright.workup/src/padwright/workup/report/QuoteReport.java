package padwright.workup.report;

import java.util.List;

import padwright.engine.quote.Labour;
import padwright.engine.quote.Quote;
import padwright.workup.words.Messages;

/** What a plan costs. */
public final class QuoteReport {

	private QuoteReport() {
	}

	/** @param plan its name */
	public static Report of(String plan, Quote quote) {
		ReportTable.Maker table = new ReportTable.Maker("").words("").figures(Messages.of("report.count"),
				Messages.of("report.each"), Messages.of("report.quote.amount"));
		quote.lines().forEach(line -> table.row(line.article(), String.valueOf(line.count()),
				Figures.money(line.price()), Figures.money(line.amount())));
		table.row(Messages.of("report.quote.parts"), "", "", Figures.money(quote.parts()));
		if (!quote.labour().equals(Labour.NONE)) {
			table.row(Messages.of("report.quote.labour", Figures.plain(quote.labour().minutes()),
					Figures.money(quote.labour().rate()), quote.labour().minutes()), "", "", Figures.money(quote.labour().amount()));
		}
		table.row(Messages.of("report.quote.net"), "", "", Figures.money(quote.net()));
		table.row(Messages.of("report.quote.tax", Figures.plain(quote.taxPercent())), "", "", Figures.money(quote.tax()));
		table.row(Messages.of("report.quote.total"), "", "", Figures.money(quote.total()));
		if (!quote.unpriced().isEmpty()) {
			table.note(Messages.of("report.quote.unpriced"));
			quote.unpriced().forEach(article -> table.note("  " + article));
		}
		return new Report(Messages.of("report.quote.title", plan), List.of(Messages.of("report.quote.lead", plan)),
				List.of(table.table()));
	}
}
