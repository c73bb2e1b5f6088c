package padwright.workup.rules;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

import padwright.model.Resolved;
import padwright.model.stock.Both;
import padwright.model.stock.Comparison;
import padwright.model.stock.Either;
import padwright.model.stock.Expression;
import padwright.model.stock.Negation;
import padwright.model.stock.Preference;
import padwright.model.stock.Rule;
import padwright.model.stock.Stock;

/** The rules and preferences that hold for a stock: its own first, then those of the stocks that it is kept with. */
public final class ShopRules {

	private ShopRules() {
	}

	/** The stock and all that it takes rules from, each once, the stock first; bears circles. */
	public static List<Stock> sources(Stock stock) {
		Set<Stock> sources = new LinkedHashSet<>();
		add(stock, sources);
		return List.copyOf(sources);
	}

	private static void add(Stock stock, Set<Stock> sources) {
		if (sources.add(stock)) {
			stock.getShared().forEach(shared -> Resolved.of(shared).ifPresent(each -> add(each, sources)));
		}
	}

	public static List<Rule> rules(Stock stock) {
		return sources(stock).stream().flatMap(each -> each.getRules().stream()).toList();
	}

	public static List<Preference> preferences(Stock stock) {
		return sources(stock).stream().flatMap(each -> each.getPreferences().stream()).toList();
	}

	/** Whether a condition asks for nothing but what is the same for every key of a plan. */
	public static boolean isOfPlan(Expression condition) {
		List<Comparison> comparisons = new ArrayList<>();
		collect(condition, comparisons);
		return !comparisons.isEmpty() && comparisons.stream()
				.allMatch(each -> RuleProperties.byName(each.getProperty()).filter(RuleProperty::ofPlan).isPresent());
	}

	private static void collect(Expression condition, List<Comparison> comparisons) {
		if (condition instanceof Comparison comparison) {
			comparisons.add(comparison);
		} else if (condition instanceof Negation negation) {
			collect(negation.getOperand(), comparisons);
		} else if (condition instanceof Both both) {
			collect(both.getLeft(), comparisons);
			collect(both.getRight(), comparisons);
		} else if (condition instanceof Either either) {
			collect(either.getLeft(), comparisons);
			collect(either.getRight(), comparisons);
		}
	}
}
