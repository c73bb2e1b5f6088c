package padwright.commands;

import java.io.PrintWriter;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import padwright.workup.report.FitReport;
import padwright.workup.sound.SystemSound;

/** What a fit proposes, for people and for programs. */
final class SoundFitText {

	private SoundFitText() {
	}

	static void print(PrintWriter out, SystemSound system, SoundFit fit) {
		TextTable.print(out, FitReport.of(system, fit.before(), fit.after()));
		out.println();
		printLines(out, fit);
		out.flush();
	}

	private static void printLines(PrintWriter out, SoundFit fit) {
		List<String> lines = fit.lines();
		if (lines.isEmpty()) {
			out.println(FitReport.nothing());
			return;
		}
		out.println("--- " + ShownPath.of(fit.chosen().file()));
		out.println("+++ " + ShownPath.of(fit.chosen().file()));
		lines.forEach(out::println);
	}

	static Map<String, Object> json(SystemSound system, SoundFit fit) {
		Map<String, Object> json = new LinkedHashMap<>();
		json.put("system", system.system().getName());
		json.put("caution", FitReport.caution());
		json.put("before", SoundJson.notes(fit.before()));
		json.put("after", SoundJson.notes(fit.after()));
		json.put("diff", fit.lines());
		return json;
	}
}
