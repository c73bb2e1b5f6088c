package padwright.commands;

import java.io.PrintWriter;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

import padwright.workup.report.SoundReport;
import padwright.workup.sound.OctaveSound;
import padwright.workup.sound.SystemSound;
import padwright.workup.sound.ToneSound;

/** What a fit proposes, for people and for programs. */
final class SoundFitText {

	private static final String CAUTION = "For a layout on paper, not for an instrument in service: metal is not taken off.";

	private SoundFitText() {
	}

	static void print(PrintWriter out, SystemSound system, SoundFit fit) {
		SoundReport.leads(system).forEach(out::println);
		out.println(CAUTION);
		out.println();
		TextTable notes = new TextTable("note", "octave", "cents before", "after");
		List<ToneSound> before = fit.before().scale();
		List<ToneSound> after = fit.after().scale();
		for (int index = 0; index < before.size(); index++) {
			notes.row(before.get(index).tone().name(), String.valueOf(before.get(index).octave()),
					cents(before.get(index)), cents(after.get(index)));
		}
		notes.print(out);
		out.println();
		TextTable octaves = new TextTable("octave", "farthest off before", "after");
		for (int index = 0; index < fit.before().octaves().size(); index++) {
			OctaveSound was = fit.before().octaves().get(index);
			octaves.row(String.valueOf(was.octave()), worst(was), worst(fit.after().octaves().get(index)));
		}
		octaves.print(out);
		out.println();
		printLines(out, fit);
		out.flush();
	}

	private static void printLines(PrintWriter out, SoundFit fit) {
		List<String> lines = fit.lines();
		if (lines.isEmpty()) {
			out.println("nothing to change");
			return;
		}
		out.println("--- " + ShownPath.of(fit.chosen().file()));
		out.println("+++ " + ShownPath.of(fit.chosen().file()));
		lines.forEach(out::println);
	}

	private static String worst(OctaveSound octave) {
		return octave.worst().tone().name() + " " + cents(octave.worst());
	}

	private static String cents(ToneSound note) {
		return note.sound().cents().map(cents -> String.format(Locale.ROOT, "%+.1f", cents)).orElse("");
	}

	static Map<String, Object> json(SystemSound system, SoundFit fit) {
		Map<String, Object> json = new LinkedHashMap<>();
		json.put("system", system.system().getName());
		json.put("caution", CAUTION);
		json.put("before", SoundJson.notes(fit.before()));
		json.put("after", SoundJson.notes(fit.after()));
		json.put("diff", fit.lines());
		return json;
	}
}
