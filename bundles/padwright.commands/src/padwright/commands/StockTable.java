package padwright.commands;

import java.io.PrintWriter;
import java.util.List;
import java.util.stream.Collectors;

import padwright.engine.quote.Money;
import padwright.workup.parts.Labels;
import padwright.workup.parts.StockDraw;
import padwright.workup.parts.StockLine;

/** A stock and what is drawn from it, for people. */
final class StockTable {

	private StockTable() {
	}

	static void print(PrintWriter out, StockDraw draw) {
		out.println(Labels.of(draw.stock()) + ", drawn on by "
				+ draw.plans().stream().map(plan -> plan.plan().getName()).collect(Collectors.joining(", ")));
		out.println();
		TextTable table = new TextTable("article", "on hand", "taken", "would take", "left", "");
		List<StockLine> touched = draw.lines().stream().filter(StockLine::isTouched).toList();
		touched.forEach(line -> table.row(row(line)));
		table.print(out);
		out.println((draw.lines().size() - touched.size()) + " more on hand that no plan asks for");
		out.println();
		printReorder(out, draw);
		out.println();
	}

	private static String[] row(StockLine line) {
		return new String[] { line.article().label(), line.onHand().map(String::valueOf).orElse("not counted"),
				String.valueOf(line.noted()), String.valueOf(line.wanted()), line.left().map(String::valueOf).orElse(""),
				line.shortage() == 0 ? "" : "short of " + line.shortage() };
	}

	private static void printReorder(PrintWriter out, StockDraw draw) {
		if (draw.reorder().isEmpty()) {
			out.println("Nothing to reorder: what is counted is enough for all plans.");
			return;
		}
		TextTable table = new TextTable("to reorder", "count", "each", "together");
		draw.reorder().forEach(line -> table.row(line.article().label(), String.valueOf(line.shortage()),
				line.article().price().map(Money::text).orElse("no price"), line.cost().map(Money::text).orElse("")));
		table.row("together, without what has no price", "", "", Money.text(draw.reorderCost()));
		table.print(out);
	}
}
