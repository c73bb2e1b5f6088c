package padwright.paper.quote;

import java.util.List;

import padwright.engine.quote.Quote;
import padwright.paper.page.HeadText;

/**
 * A quote on paper.
 *
 * @param head of the pages
 * @param title of the document
 * @param quote what it costs
 * @param work what an inspection asks for besides, which is in no sum; a sentence or two each
 * @param cautions for the materials named, a sentence each
 */
public record QuoteSheet(HeadText head, String title, Quote quote, List<String> work, List<String> cautions) {

	public QuoteSheet {
		work = List.copyOf(work);
		cautions = List.copyOf(cautions);
	}
}
