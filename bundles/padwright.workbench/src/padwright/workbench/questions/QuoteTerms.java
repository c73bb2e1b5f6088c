package padwright.workbench.questions;

import java.math.BigDecimal;

import padwright.engine.quote.Labour;

/**
 * What a quote charges besides parts.
 *
 * @param taxPercent on parts and time
 */
public record QuoteTerms(Labour labour, BigDecimal taxPercent) {

	/** Parts alone. */
	public static final QuoteTerms PARTS = new QuoteTerms(Labour.NONE, BigDecimal.ZERO);
}
