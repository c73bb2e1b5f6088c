package padwright.commands;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import padwright.workup.choose.Candidate;
import padwright.workup.choose.KeyChoice;
import padwright.workup.choose.PadChoice;
import padwright.workup.choose.Reason;
import padwright.workup.choose.SetChoice;
import padwright.workup.inspection.Recommendation;
import padwright.workup.parts.Labels;

/** The choice of pads for people. */
final class ChoiceText {

	private ChoiceText() {
	}

	static void print(PrintWriter out, PadChoice choice, List<Recommendation> work) {
		out.println(Labels.of(choice.plan().plan())
				+ "; the figure before each reason is its weight in the stock, which the shop sets");
		if (!work.isEmpty()) {
			out.println();
			out.println("Before padding, and without taking any metal off:");
			work.forEach(each -> out.println("  " + each.inOneLine()));
		}
		out.println();
		out.println("One kind for the whole set, the best first:");
		choice.set().forEach(each -> print(out, each, choice.keys().size()));
		out.println();
		out.println("A pad for each key, from what is in stock:");
		TextTable table = new TextTable("key", "pad", "else, the best first");
		choice.keys().forEach(key -> row(table, key, choice.mixed().byKey().get(key)));
		table.print(out);
		out.println();
		out.println("Why:");
		byReasons(choice).forEach((why, labels) -> out.println("  " + why.replace("\n", "\n    ") + "\n    at "
				+ String.join(", ", labels)));
		printDiffering(out, choice);
	}

	/** The keys to which the same is said. */
	private static Map<String, List<String>> byReasons(PadChoice choice) {
		Map<String, List<String>> keys = new LinkedHashMap<>();
		choice.mixed().byKey().forEach((key, chosen) -> keys.computeIfAbsent(why(chosen), any -> new ArrayList<>())
				.add(key.label()));
		return keys;
	}

	private static String why(Candidate chosen) {
		Stream<String> weighed = chosen.reasons().stream().map(ChoiceText::words);
		Stream<String> rules = chosen.broken().stream().map(rule -> "a rule of the shop: " + rule);
		return Stream.of(Stream.of(Labels.of(chosen.pad())), weighed, rules).flatMap(lines -> lines)
				.collect(Collectors.joining("\n"));
	}

	private static void print(PrintWriter out, SetChoice choice, int keys) {
		out.println("  " + Labels.of(choice.pad()) + ": goes into " + choice.fitting().size() + " of " + keys + " keys");
		choice.reasons().forEach((reason, labels) -> out.println("    " + words(reason)
				+ (labels.size() == choice.fitting().size() ? "" : ": " + String.join(", ", labels))));
		byReason(choice.lacking()).forEach((why, labels) ->
				out.println("    cannot go in at " + String.join(", ", labels) + ": " + why));
	}

	private static Map<String, List<String>> byReason(Map<String, String> lacking) {
		return lacking.entrySet().stream().collect(Collectors.groupingBy(Map.Entry::getValue, TreeMap::new,
				Collectors.mapping(Map.Entry::getKey, Collectors.toList())));
	}

	private static void row(TextTable table, KeyChoice key, Candidate chosen) {
		String others = key.candidates().stream().filter(candidate -> candidate.fits() && candidate != chosen)
				.map(candidate -> Labels.of(candidate.pad())).collect(Collectors.joining(", "));
		table.row(key.label(), chosen == null ? "nothing in stock is left for it" : Labels.of(chosen.pad()), others);
	}

	private static String words(Reason reason) {
		return (reason.isFor() ? "for (" : "against (") + reason.weight().abs().toPlainString() + ") " + reason.text();
	}

	private static void printDiffering(PrintWriter out, PadChoice choice) {
		Map<String, List<String>> differing = choice.mixed().differing().stream().collect(Collectors.groupingBy(
				key -> Labels.of(choice.mixed().byKey().get(key).pad()), LinkedHashMap::new,
				Collectors.mapping(KeyChoice::label, Collectors.toList())));
		String others = differing.entrySet().stream()
				.map(entry -> entry.getKey() + " at " + String.join(", ", entry.getValue()))
				.collect(Collectors.joining("; "));
		out.println();
		choice.mixed().main().ifPresent(main -> out.println("A set of " + Labels.of(main)
				+ (others.isEmpty() ? " throughout." : ", but " + others + ".")));
	}
}
