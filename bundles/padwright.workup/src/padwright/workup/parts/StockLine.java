package padwright.workup.parts;

import java.math.BigDecimal;
import java.util.Optional;

/**
 * One article of a stock against all plans that draw on it.
 *
 * @param onHand as the stock file counts it, before any plan; empty if it is not counted
 * @param noted how many the plans note as taken
 * @param wanted how many more the answers would take that no plan notes yet
 */
public record StockLine(Article article, Optional<Integer> onHand, int noted, int wanted) {

	/** What is left when all is done; below zero for a shortage; empty if it is not counted. */
	public Optional<Integer> left() {
		return onHand.map(count -> count - noted - wanted);
	}

	/** How many are missing for what no plan notes yet and what they note beyond the count; 0 for none. */
	public int shortage() {
		return left().map(count -> Math.max(0, -count)).orElse(0);
	}

	public boolean isTouched() {
		return noted + wanted > 0;
	}

	/** What the missing ones cost, exactly; empty without a price. */
	public Optional<BigDecimal> cost() {
		return article.price().map(price -> price.multiply(BigDecimal.valueOf(shortage())));
	}
}
