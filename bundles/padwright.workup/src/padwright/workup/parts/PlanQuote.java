package padwright.workup.parts;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

import padwright.engine.quote.Labour;
import padwright.engine.quote.Quote;
import padwright.engine.quote.QuoteLine;
import padwright.workup.service.KeyJob;
import padwright.workup.solve.PlanSolution;
import padwright.workup.words.Messages;

/** The quote of a solved plan: all that it takes from the stock, noted or not, at the stock's prices. */
public final class PlanQuote {

	private PlanQuote() {
	}

	/**
	 * The quote.
	 *
	 * @param taxPercent 0 or more
	 */
	public static Quote of(PlanSolution solution, Labour labour, BigDecimal taxPercent) {
		Map<Article, Integer> counts = new TreeMap<>(Article.ORDER);
		Withdrawal.of(solution).forEach(take -> counts.merge(take.article(), 1, Integer::sum));
		List<QuoteLine> lines = new ArrayList<>();
		List<String> unpriced = new ArrayList<>();
		counts.forEach((article, count) -> article.price().ifPresentOrElse(
				price -> lines.add(new QuoteLine(ArticleWords.of(article), count, price)),
				() -> unpriced.add(count + " × " + ArticleWords.of(article))));
		unpriced.addAll(unknown(solution));
		return new Quote(lines, unpriced, labour, taxPercent);
	}

	/** Keys that ask for something that cannot be told. */
	private static List<String> unknown(PlanSolution solution) {
		List<String> keys = solution.keys().stream().filter(key -> !key.unsolved().isEmpty())
				.map(key -> label(key.job())).distinct().toList();
		return keys.isEmpty() ? List.of()
				: List.of(Messages.of(keys.size() == 1 ? "quote.unsolved.one" : "quote.unsolved.more", String.join(", ", keys)));
	}

	private static String label(KeyJob job) {
		return Optional.of(job).flatMap(KeyJob::key).map(key -> key.label()).orElse(job.name());
	}
}
