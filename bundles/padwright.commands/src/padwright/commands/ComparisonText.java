package padwright.commands;

import java.io.PrintWriter;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import padwright.workup.compare.Change;
import padwright.workup.compare.ComparisonReport;
import padwright.workup.compare.KeyComparison;
import padwright.workup.compare.PlanComparison;
import padwright.workup.compare.SystemComparison;

/** Two services or systems side by side. */
final class ComparisonText {

	private ComparisonText() {
	}

	static void print(PrintWriter out, PlanComparison comparison) {
		TextTable.print(out, ComparisonReport.of(comparison));
	}

	/** Lines that begin with - are of the old one, with + of the new one; what does not differ is not told. */
	static void print(PrintWriter out, SystemComparison comparison) {
		out.println("--- " + comparison.then().getName());
		out.println("+++ " + comparison.now().getName());
		comparison.parts().stream().filter(part -> !part.changes().isEmpty()).forEach(part -> print(out, part));
		comparison.onlyThen().forEach(part -> out.println("- " + part));
		comparison.onlyNow().forEach(part -> out.println("+ " + part));
	}

	private static void print(PrintWriter out, KeyComparison part) {
		out.println("@@ " + part.label() + " @@");
		for (Change change : part.changes()) {
			out.println("- " + change.what() + " " + change.then());
			out.println("+ " + change.what() + " " + change.now());
		}
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
