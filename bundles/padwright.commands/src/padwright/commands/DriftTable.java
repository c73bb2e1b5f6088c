package padwright.commands;

import java.io.PrintWriter;
import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.stream.Collectors;

import padwright.engine.drift.Climate;
import padwright.engine.drift.Drift;
import padwright.engine.drift.HeightChange;
import padwright.engine.drift.LayerDrift;
import padwright.engine.length.Length;
import padwright.workup.drift.KeyDrift;
import padwright.workup.drift.PlanDrift;
import padwright.workup.drift.UnknownLayer;
import padwright.workup.words.GapWords;

/** Drift for people, in thou: key by key, then what lies in the cups. */
final class DriftTable {

	private static final int DECIMALS = 3;

	private final PlanDrift drift;
	private final Length tolerance;
	private final PrintWriter out;

	private DriftTable(PlanDrift drift, PrintWriter out) {
		this.drift = drift;
		this.tolerance = drift.plan().tolerance();
		this.out = out;
	}

	static void print(PrintWriter out, PlanDrift drift) {
		new DriftTable(drift, out).print();
	}

	private void print() {
		out.println(drift.plan().plan().getName() + ": from the bench at " + climate(drift.bench()) + " to home at "
				+ climate(drift.home()) + ", seat within " + tolerance + "; changes in thou, plus toward the rim.");
		out.println("Opens: how wide the gap under a pad that lay level becomes, since a key turns on its hinge until it "
				+ "touches.");
		out.println();
		TextTable table = new TextTable("key", "known change", "opens", "most from", "verdict");
		drift.keys().forEach(key -> table.row(label(key),
				key.known().map(Drift::total).map(DriftTable::change).orElse("-"),
				key.opened().map(DriftTable::opened).orElse(""),
				key.known().map(known -> known.largest().layer().name()).orElse(""), verdict(key)));
		table.print(out);
		cups().forEach(this::printCup);
	}

	/** Keys whose cups hold the same layers, whatever their thickness. */
	private Collection<List<KeyDrift>> cups() {
		return drift.keys().stream().collect(Collectors.groupingBy(
				key -> List.of(layers(key).stream().map(layer -> layer.layer().name()).toList(), key.unknown()),
				LinkedHashMap::new, Collectors.toList())).values();
	}

	private void printCup(List<KeyDrift> alike) {
		KeyDrift most = alike.stream().max(Comparator.comparing(DriftTable::magnitude)).orElseThrow();
		out.println();
		out.println(label(most) + (alike.size() == 1 ? ":" : ", the most of " + alike.size()
				+ " keys that differ in thickness only:"));
		TextTable table = new TextTable("  layer", "thou", "change");
		layers(most).forEach(layer -> table.row("  " + layer.layer().name(), Amounts.thou(layer.layer().thickness()),
				change(layer.change())));
		table.print(out);
		if (!most.unknown().isEmpty()) {
			out.println("  not known: "
					+ most.unknown().stream().map(UnknownLayer::toString).collect(Collectors.joining(", ")));
		}
	}

	private static List<LayerDrift> layers(KeyDrift key) {
		return key.known().map(Drift::layers).orElse(List.of());
	}

	private static Length magnitude(KeyDrift key) {
		return key.known().map(Drift::total)
				.map(total -> Collections.max(List.of(total.low().abs(), total.high().abs())))
				.orElse(Length.ZERO);
	}

	private String verdict(KeyDrift key) {
		String words = key.verdictOfKnown(tolerance).map(verdict -> switch (verdict) {
		case SURELY_WITHIN -> "within the seat";
		case MAY_EXCEED -> "may leave the seat";
		case SURELY_EXCEEDS -> "leaves the seat";
		}).orElse("nothing is known");
		return key.complete() || key.known().isEmpty() ? words : words + ", as far as known";
	}

	private String label(KeyDrift key) {
		return KeyLabels.of(drift.plan(), key.key());
	}

	private static String change(HeightChange change) {
		return Amounts.signedThou(change.low(), DECIMALS) + " to "
				+ Amounts.signedThou(change.high(), DECIMALS);
	}

	private static String opened(HeightChange gap) {
		return GapWords.range(gap.low(), gap.high());
	}

	private static String climate(Climate climate) {
		return climate.celsius().toPlainString() + " °C " + climate.relativeHumidity().toPlainString() + " %RH";
	}
}
