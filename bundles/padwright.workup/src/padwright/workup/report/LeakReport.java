package padwright.workup.report;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Collections;
import java.util.List;
import java.util.stream.Collectors;

import padwright.engine.leak.LeakComparison;
import padwright.engine.leak.LikelyFlow;
import padwright.engine.length.Length;
import padwright.workup.leak.PlanLeak;
import padwright.workup.parts.Labels;
import padwright.workup.service.KeyRim;
import padwright.workup.words.Messages;

/** What every key leaks, the worst before first. */
public final class LeakReport {

	private static final double LEAST = 0.1;
	private static final double NANOMETRES_PER_MILLIMETRE = 1e6;

	private final PlanLeak leak;
	private final LeakComparison comparison;

	private LeakReport(PlanLeak leak) {
		this.leak = leak;
		this.comparison = leak.comparison();
	}

	/** @param celsius of the air */
	public static Report of(PlanLeak leak, BigDecimal celsius) {
		LeakReport report = new LeakReport(leak);
		return new Report(Messages.of("report.leak.title", leak.plan().plan().getName()), report.leads(celsius),
				List.of(report.table()));
	}

	private List<String> leads(BigDecimal celsius) {
		return List.of(Messages.of("report.leak.units", leak.plan().plan().getName(),
				Figures.number(comparison.before().tester().pascals(), 0), Figures.plain(celsius)),
				Messages.of("report.leak.columns"), Messages.of("report.leak.model"));
	}

	private ReportTable table() {
		ReportTable.Maker table = new ReportTable.Maker("").figures(Messages.of("report.rank"))
				.words(Messages.of("report.key")).figures(Messages.of("report.leak.before"), Messages.of("report.leak.hole"),
						Messages.of("report.share"), Messages.of("report.leak.after"), Messages.of("report.leak.hole"),
						Messages.of("report.leak.rankAfter"));
		List<String> shares = shares();
		for (int row = 0; row < comparison.rows().size(); row++) {
			row(comparison.rows().get(row), shares.get(row), table);
		}
		table.row("", Messages.of("report.leak.all"), flow(comparison.before().all()),
				hole(comparison.before().equivalentHole()), "", flow(comparison.after().all()),
				hole(comparison.after().equivalentHole()), "");
		notes(table);
		return table.table();
	}

	/** Of what leaks before, in whole percent that sum to a hundred; empty where nothing leaks. */
	private List<String> shares() {
		List<Double> flows = comparison.rows().stream().map(row -> row.before().flow().expected()).toList();
		return flows.stream().anyMatch(flow -> flow > 0) ? Figures.percents(flows)
				: Collections.nCopies(flows.size(), "");
	}

	private void row(LeakComparison.Row row, String share, ReportTable.Maker table) {
		LikelyFlow flow = row.before().flow();
		table.ofKey(row.before().key(), String.valueOf(comparison.before().ranked().indexOf(row.before()) + 1),
				label(row.before().key()), flow(flow), hole(row.before().equivalentHole()),
				flow.expected() > 0 ? share : "", flow(row.after().flow()), hole(row.after().equivalentHole()),
				String.valueOf(comparison.after().ranked().indexOf(row.after()) + 1));
	}

	private void notes(ReportTable.Maker table) {
		List<String> assumed = leak.felt().assumedWidths();
		if (!assumed.isEmpty()) {
			table.note(Messages.of("report.leak.assumed", Figures.millimetres(KeyRim.USUAL_WIDTH, 2),
					assumed.stream().map(this::label).collect(Collectors.joining(", "))));
		}
		leak.felt().leftOut()
				.forEach(key -> table.note(Messages.of("report.leftOut", label(key.key()), key.why())));
	}

	private String label(String key) {
		return Labels.ofKey(leak.plan(), key);
	}

	/** To two figures: as far as feelers and a slit tell. */
	private static String flow(LikelyFlow flow) {
		return Messages.of("report.leak.flow", figures(flow.expected()), figures(flow.low()), figures(flow.high()));
	}

	private static String figures(double millilitres) {
		return millilitres < LEAST ? Messages.of("report.leak.under", Figures.number(LEAST, 1))
				: Figures.plain(new BigDecimal(millilitres).round(new MathContext(2)));
	}

	private static String hole(Length diameter) {
		return Figures.number(diameter.nanometres() / NANOMETRES_PER_MILLIMETRE, 2);
	}
}
