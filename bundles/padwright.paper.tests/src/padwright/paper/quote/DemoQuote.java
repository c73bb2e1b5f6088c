package padwright.paper.quote;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

import padwright.engine.quote.Labour;
import padwright.engine.quote.Quote;
import padwright.engine.quote.QuoteLine;
import padwright.paper.page.HeadText;

/** A quote; all invented. */
public final class DemoQuote {

	private DemoQuote() {
	}

	public static QuoteSheet sheet() {
		return sheet(5);
	}

	static QuoteSheet sheet(int lines) {
		List<QuoteLine> quoted = new ArrayList<>();
		for (int line = 1; line <= lines; line++) {
			quoted.add(new QuoteLine("rigid-base pad " + (line + 12) + ".5 mm", line, new BigDecimal("14.005")));
		}
		Quote quote = new Quote(quoted, List.of("3 × felt"), new Labour(new BigDecimal("200"), new BigDecimal("61.50")),
				new BigDecimal("7.7"));
		return new QuoteSheet(new HeadText("Boehm flute", "serial 1", "Quote", List.of()), "Quote", quote,
				List.of("head cork: dry. Fit a new head cork: it lets air past."),
				List.of("Thin: H315 Causes skin irritation."));
	}
}
