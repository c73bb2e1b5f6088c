package padwright.commands;

import java.io.PrintWriter;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import padwright.workup.compare.ComparisonReport;
import padwright.workup.compare.KeyComparison;
import padwright.workup.compare.PlanComparison;
import padwright.workup.compare.SystemComparison;
import padwright.workup.compare.SystemComparisonReport;

/** Two services or systems side by side. */
final class ComparisonText {

	private ComparisonText() {
	}

	static void print(PrintWriter out, PlanComparison comparison) {
		TextTable.print(out, ComparisonReport.of(comparison));
	}

	static void print(PrintWriter out, SystemComparison comparison) {
		TextTable.print(out, SystemComparisonReport.of(comparison));
	}

	private static List<String> unchanged(List<KeyComparison> parts) {
		return parts.stream().filter(key -> key.changes().isEmpty()).map(KeyComparison::label).toList();
	}

	static Map<String, Object> json(PlanComparison comparison) {
		Map<String, Object> json = new LinkedHashMap<>();
		json.put("old", comparison.then().plan().getName());
		json.put("new", comparison.now().plan().getName());
		json.put("sameInstrument", comparison.sameInstrument());
		putParts(json, "key", comparison.keys(), comparison.onlyThen(), comparison.onlyNow());
		return json;
	}

	static Map<String, Object> json(SystemComparison comparison) {
		Map<String, Object> json = new LinkedHashMap<>();
		json.put("old", comparison.then().getName());
		json.put("new", comparison.now().getName());
		putParts(json, "part", comparison.parts(), comparison.onlyThen(), comparison.onlyNow());
		return json;
	}

	private static void putParts(Map<String, Object> json, String part, List<KeyComparison> parts, List<String> onlyThen,
			List<String> onlyNow) {
		json.put("changed", parts.stream().filter(each -> !each.changes().isEmpty())
				.map(each -> Map.of(part, each.label(), "changes", each.changes())).toList());
		json.put("unchanged", unchanged(parts));
		json.put("onlyOld", onlyThen);
		json.put("onlyNew", onlyNow);
	}
}
