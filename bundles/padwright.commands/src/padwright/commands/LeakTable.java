package padwright.commands;

import java.io.PrintWriter;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.stream.Collectors;

import padwright.engine.leak.InstrumentLeak;
import padwright.engine.leak.LeakComparison;
import padwright.engine.leak.LikelyFlow;
import padwright.engine.length.Length;
import padwright.workup.leak.KeyRim;
import padwright.workup.leak.PlanLeak;

/** Leaks for people, the worst key before first. */
final class LeakTable {

	private static final double LEAST = 0.1;

	private final PlanLeak leak;
	private final LeakComparison comparison;

	private LeakTable(PlanLeak leak) {
		this.leak = leak;
		this.comparison = leak.comparison();
	}

	static void print(PrintWriter out, PlanLeak leak, BigDecimal celsius) {
		new LeakTable(leak).print(out, celsius);
	}

	private void print(PrintWriter out, BigDecimal celsius) {
		out.println(leak.plan().plan().getName() + ": mL/min at "
				+ Amounts.number(comparison.before().tester().pascals(), 0) + " Pa and "
				+ celsius.toPlainString() + " °C; hole: the round hole that leaks as much, mm across.");
		out.println("Before: as felt. After: with what is done after the last readings. Expected, and in brackets the range in "
				+ "which 9 in 10 such pads lie: a dot never tells that nothing is open.");
		out.println("A model of a thin slit: the tester decides.");
		out.println();
		TextTable table = new TextTable("rank", "key", "before", "hole", "share", "after", "hole", "rank after");
		comparison.rows().forEach(row -> row(row, table));
		table.row("", "all keys", flow(comparison.before().all()),
				hole(comparison.before().equivalentHole()), "", flow(comparison.after().all()),
				hole(comparison.after().equivalentHole()), "");
		table.print(out);
		notes(out);
	}

	private void row(LeakComparison.Row row, TextTable table) {
		LikelyFlow flow = row.before().flow();
		InstrumentLeak after = comparison.after();
		table.row(String.valueOf(comparison.before().ranked().indexOf(row.before()) + 1), label(row.before().key()),
				flow(flow), hole(row.before().equivalentHole()),
				flow.expected() > 0 ? Amounts.percent(flow.expected() / comparison.before().all().expected()) : "",
				flow(row.after().flow()), hole(row.after().equivalentHole()),
				String.valueOf(after.ranked().indexOf(row.after()) + 1));
	}

	private void notes(PrintWriter out) {
		List<String> assumed = leak.felt().assumedWidths();
		if (!assumed.isEmpty() || !leak.felt().leftOut().isEmpty()) {
			out.println();
		}
		if (!assumed.isEmpty()) {
			out.println("No rim width in the key system: " + Amounts.millimetres(KeyRim.USUAL_WIDTH, 2)
					+ " mm assumed for " + assumed.stream().map(this::label).collect(Collectors.joining(", ")));
		}
		leak.felt().leftOut().forEach(key -> out.println(label(key.key()) + ": left out, " + key.why()));
	}

	private String label(String key) {
		return KeyLabels.of(leak.plan(), key);
	}

	/** To two figures: as far as feelers and a slit tell. */
	private static String flow(LikelyFlow flow) {
		return figures(flow.expected()) + " (" + figures(flow.low()) + " to " + figures(flow.high()) + ")";
	}

	private static String figures(double millilitres) {
		return millilitres < LEAST ? "under " + LEAST
				: new BigDecimal(millilitres).round(new MathContext(2)).stripTrailingZeros().toPlainString();
	}

	private static String hole(Length diameter) {
		return Amounts.number(diameter.nanometres() / 1e6, 2);
	}
}
