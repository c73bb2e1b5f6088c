package padwright.exchange;

import padwright.model.plan.Document;

/**
 * A document that came from outside.
 *
 * @param text      in the language, laid out
 * @param extension of the files that hold such a document, without the dot
 */
public record Imported(String text, String extension) {

	static String extension(Document document) {
		if (!document.getPlans().isEmpty()) {
			return "plan";
		}
		return document.getStocks().isEmpty() ? "keys" : "stock";
	}
}
