package padwright.commands;

import java.io.PrintWriter;
import java.util.LinkedHashMap;
import java.util.Map;

import padwright.engine.quote.Quote;
import padwright.engine.quote.QuoteLine;
import padwright.workup.report.QuoteReport;

/** A quote for people and for programs. */
final class QuoteText {

	private QuoteText() {
	}

	static void print(PrintWriter out, String plan, Quote quote) {
		TextTable.print(out, QuoteReport.of(plan, quote));
	}

	static Map<String, Object> json(String plan, Quote quote) {
		Map<String, Object> json = new LinkedHashMap<>();
		json.put("plan", plan);
		json.put("lines", quote.lines().stream().map(QuoteText::line).toList());
		json.put("unpriced", quote.unpriced());
		json.put("parts", quote.parts());
		json.put("minutes", quote.labour().minutes());
		json.put("rate", quote.labour().rate());
		json.put("labour", quote.labour().amount());
		json.put("net", quote.net());
		json.put("taxPercent", quote.taxPercent());
		json.put("tax", quote.tax());
		json.put("total", quote.total());
		return json;
	}

	private static Map<String, Object> line(QuoteLine line) {
		Map<String, Object> json = new LinkedHashMap<>();
		json.put("article", line.article());
		json.put("count", line.count());
		json.put("price", line.price());
		json.put("amount", line.amount());
		return json;
	}
}
