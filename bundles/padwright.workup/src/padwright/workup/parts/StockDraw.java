package padwright.workup.parts;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

import padwright.model.Lengths;
import padwright.model.keysystem.Titled;
import padwright.model.stock.Assortment;
import padwright.model.stock.FilmSet;
import padwright.model.stock.Pad;
import padwright.model.stock.Backing;
import padwright.model.stock.Stock;
import padwright.workup.service.ServicePlan;
import padwright.workup.solve.PlanSolution;

/**
 * What all plans of a shop draw from one stock. Each plan is solved with what it alone would find there; together they
 * may want more, which is the shortage.
 *
 * @param plans that draw on the stock
 * @param lines pads, backing discs and film in the order of the stock; then what the plans take in sizes that it lacks
 */
public record StockDraw(Stock stock, List<ServicePlan> plans, List<StockLine> lines) {

	public StockDraw {
		plans = List.copyOf(plans);
		lines = List.copyOf(lines);
	}

	/** One for each stock that a plan draws on, in the order of the plans. */
	public static List<StockDraw> of(List<PlanSolution> solutions) {
		Set<Stock> stocks = new LinkedHashSet<>();
		solutions.forEach(solution -> solution.plan().stock().ifPresent(stocks::add));
		return stocks.stream().map(stock -> of(stock, solutions.stream()
				.filter(solution -> solution.plan().stock().filter(stock::equals).isPresent()).toList())).toList();
	}

	private static StockDraw of(Stock stock, List<PlanSolution> solutions) {
		Map<Article, int[]> counts = new LinkedHashMap<>();
		articles(stock).forEach(article -> counts.put(article, new int[2]));
		solutions.stream().flatMap(solution -> Withdrawal.of(solution).stream()).forEach(
				take -> counts.computeIfAbsent(take.article(), article -> new int[2])[take.noted() ? 0 : 1]++);
		List<StockLine> lines = counts.entrySet().stream().map(entry -> new StockLine(entry.getKey(),
				entry.getKey().onHand(), entry.getValue()[0], entry.getValue()[1])).toList();
		return new StockDraw(stock, solutions.stream().map(PlanSolution::plan).toList(), lines);
	}

	private static Stream<Article> articles(Stock stock) {
		Stream<Article> pads = stock.getPads().stream().flatMap((Pad pad) -> sizes(pad, pad.getDiameters()));
		Stream<Article> discs =
				stock.getBackings().stream().flatMap((Backing disc) -> sizes(disc, disc.getDiameters()));
		Stream<Article> films = stock.getFilms().stream().flatMap((FilmSet film) -> sizes(film, film.getThicknesses()));
		return Stream.of(pads, discs, films).flatMap(all -> all);
	}

	private static Stream<Article> sizes(Titled source, Assortment assortment) {
		if (assortment == null) {
			return Stream.of(new Article(source, Optional.empty()));
		}
		return assortment.getSizes().stream()
				.flatMap(size -> Lengths.exact(size.getSize(), Lengths.unit(assortment.getUnit(), assortment)).stream())
				.map(size -> new Article(source, Optional.of(size)));
	}

	/** What is short, in the order of the lines. */
	public List<StockLine> reorder() {
		return lines.stream().filter(line -> line.shortage() > 0).toList();
	}

	/** What the reorder list costs, exactly, without what has no price. */
	public BigDecimal reorderCost() {
		return reorder().stream().flatMap(line -> line.cost().stream()).reduce(BigDecimal.ZERO, BigDecimal::add);
	}
}
