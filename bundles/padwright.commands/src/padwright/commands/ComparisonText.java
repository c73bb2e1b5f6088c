package padwright.commands;

import java.io.PrintWriter;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import padwright.model.plan.Plan;
import padwright.workup.compare.Change;
import padwright.workup.compare.KeyComparison;
import padwright.workup.compare.PlanComparison;

/** Two services side by side: lines that begin with - are of the old plan, with + of the new one. */
final class ComparisonText {

	private ComparisonText() {
	}

	static void print(PrintWriter out, PlanComparison comparison) {
		out.println("--- " + named(comparison.then().plan()));
		out.println("+++ " + named(comparison.now().plan()));
		comparison.keys().stream().filter(key -> !key.changes().isEmpty()).forEach(key -> print(out, key));
		comparison.onlyThen().forEach(key -> out.println("- " + key));
		comparison.onlyNow().forEach(key -> out.println("+ " + key));
		List<String> unchanged = unchanged(comparison);
		if (!unchanged.isEmpty()) {
			out.println("unchanged: " + String.join(", ", unchanged));
		}
	}

	private static String named(Plan plan) {
		return plan.getName() + (plan.getDate() == null ? "" : " " + plan.getDate());
	}

	private static void print(PrintWriter out, KeyComparison key) {
		out.println("@@ " + key.label() + " @@");
		for (Change change : key.changes()) {
			out.println("- " + change.what() + " " + change.then());
			out.println("+ " + change.what() + " " + change.now()
					+ (change.by().isEmpty() ? "" : " (" + change.by() + ")"));
		}
	}

	private static List<String> unchanged(PlanComparison comparison) {
		return comparison.keys().stream().filter(key -> key.changes().isEmpty()).map(KeyComparison::label).toList();
	}

	static Map<String, Object> json(PlanComparison comparison) {
		Map<String, Object> json = new LinkedHashMap<>();
		json.put("old", comparison.then().plan().getName());
		json.put("new", comparison.now().plan().getName());
		json.put("sameInstrument", comparison.sameInstrument());
		json.put("changed", comparison.keys().stream().filter(key -> !key.changes().isEmpty())
				.map(key -> Map.of("key", key.label(), "changes", key.changes())).toList());
		json.put("unchanged", unchanged(comparison));
		json.put("onlyOld", comparison.onlyThen());
		json.put("onlyNew", comparison.onlyNow());
		return json;
	}
}
