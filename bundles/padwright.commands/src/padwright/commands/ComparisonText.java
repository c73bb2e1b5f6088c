package padwright.commands;

import java.io.PrintWriter;
import java.util.LinkedHashMap;
import java.util.Map;

import padwright.workup.compare.ComparisonReport;
import padwright.workup.compare.PlanComparison;

/** Two services side by side. */
final class ComparisonText {

	private ComparisonText() {
	}

	static void print(PrintWriter out, PlanComparison comparison) {
		TextTable.print(out, ComparisonReport.of(comparison));
	}

	static Map<String, Object> json(PlanComparison comparison) {
		Map<String, Object> json = new LinkedHashMap<>();
		json.put("old", comparison.then().plan().getName());
		json.put("new", comparison.now().plan().getName());
		json.put("sameInstrument", comparison.sameInstrument());
		json.put("changed", comparison.keys().stream().filter(key -> !key.changes().isEmpty())
				.map(key -> Map.of("key", key.label(), "changes", key.changes())).toList());
		json.put("unchanged", comparison.unchanged());
		json.put("onlyOld", comparison.onlyThen());
		json.put("onlyNew", comparison.onlyNow());
		return json;
	}
}
