package padwright.commands;

import java.io.PrintWriter;
import java.util.LinkedHashMap;
import java.util.Map;

import padwright.engine.quote.Labour;
import padwright.engine.quote.Money;
import padwright.engine.quote.Quote;
import padwright.engine.quote.QuoteLine;

/** A quote for people and for programs. */
final class QuoteText {

	private QuoteText() {
	}

	static void print(PrintWriter out, String plan, Quote quote) {
		out.println(plan + ", in the currency of the stock's prices; amounts rounded to hundredths, halves up");
		out.println();
		TextTable table = new TextTable("", "count", "each", "amount");
		quote.lines().forEach(line -> table.row(line.article(), String.valueOf(line.count()),
				Money.text(line.price()), Money.text(line.amount())));
		table.row("parts, film and glue", "", "", Money.text(quote.parts()));
		if (!quote.labour().equals(Labour.NONE)) {
			table.row(quote.labour().minutes().toPlainString() + " minutes at "
					+ Money.text(quote.labour().rate()) + " an hour", "", "", Money.text(quote.labour().amount()));
		}
		table.row("net", "", "", Money.text(quote.net()));
		table.row("tax " + quote.taxPercent().toPlainString() + " %", "", "", Money.text(quote.tax()));
		table.row("total", "", "", Money.text(quote.total()));
		table.print(out);
		if (!quote.unpriced().isEmpty()) {
			out.println();
			out.println("In no sum, since it has no price:");
			quote.unpriced().forEach(article -> out.println("  " + article));
		}
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
