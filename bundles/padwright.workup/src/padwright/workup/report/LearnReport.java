package padwright.workup.report;

import java.util.List;

import padwright.workup.learn.LearnWords;
import padwright.workup.learn.LearnedFigure;
import padwright.workup.learn.ShopLearning;
import padwright.workup.words.Messages;

/** What a shop has learned. */
public final class LearnReport {

	private LearnReport() {
	}

	public static Report of(ShopLearning learning) {
		ReportTable.Maker table = new ReportTable.Maker("").words(Messages.of("report.learn.what"),
				Messages.of("report.learn.of")).figures(Messages.of("report.learn.figure"))
				.words(Messages.of("report.learn.evidence"));
		learning.figures().forEach(figure -> row(figure, table));
		if (learning.figures().isEmpty()) {
			table.note(Messages.of("report.learn.nothing"));
		}
		return new Report(Messages.of("report.learn.title"), List.of(Messages.of("report.learn.lead", learning.plans())),
				List.of(table.table()));
	}

	private static void row(LearnedFigure figure, ReportTable.Maker table) {
		table.row(LearnWords.topic(figure.topic()), figure.of().words(),
				figure.figure().map(learned -> LearnWords.range(figure.topic(), learned))
						.orElse(Messages.of("report.learn.notTold")), figure.evidence().words());
	}
}
