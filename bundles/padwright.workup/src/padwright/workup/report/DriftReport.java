package padwright.workup.report;

import java.util.ArrayList;
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
import padwright.workup.parts.Labels;
import padwright.workup.words.GapWords;
import padwright.workup.words.LengthWords;
import padwright.workup.words.Messages;
import padwright.workup.words.ShownUnit;

/** What the player's climate does to the pads, in thou: key by key, then what lies in the cups. */
public final class DriftReport {


	private final PlanDrift drift;
	private final Length tolerance;

	private DriftReport(PlanDrift drift) {
		this.drift = drift;
		this.tolerance = drift.plan().tolerance();
	}

	public static Report of(PlanDrift drift) {
		DriftReport report = new DriftReport(drift);
		List<ReportTable> tables = new ArrayList<>(List.of(report.keys()));
		report.cups().forEach(cup -> tables.add(report.cup(cup)));
		return new Report(Messages.of("report.drift.title", drift.plan().plan().getName()),
				List.of(Messages.of("report.drift.lead", drift.plan().plan().getName(), climate(drift.bench()),
						climate(drift.home()), report.tolerance, ShownUnit.symbol()), Messages.of("report.drift.opensWhat")), tables);
	}

	private ReportTable keys() {
		ReportTable.Maker table = new ReportTable.Maker("").words(Messages.of("report.key"),
				Messages.of("report.drift.known"), Messages.of("report.drift.opens"), Messages.of("report.drift.most"),
				Messages.of("report.drift.verdict"));
		drift.keys().forEach(key -> table.ofKey(key.key(), label(key),
				key.known().map(Drift::total).map(DriftReport::change).orElse("-"),
				key.opened().map(gap -> GapWords.range(gap.low(), gap.high())).orElse(""),
				key.known().map(known -> known.largest().layer().name()).orElse(""), verdict(key)));
		return table.table();
	}

	/** Keys whose cups hold the same layers, whatever their thickness. */
	private Collection<List<KeyDrift>> cups() {
		return drift.keys().stream().collect(Collectors.groupingBy(
				key -> List.of(layers(key).stream().map(layer -> layer.layer().name()).toList(), key.unknown()),
				LinkedHashMap::new, Collectors.toList())).values();
	}

	private ReportTable cup(List<KeyDrift> alike) {
		KeyDrift most = alike.stream().max(Comparator.comparing(DriftReport::magnitude)).orElseThrow();
		ReportTable.Maker table = new ReportTable.Maker(alike.size() == 1 ? Messages.of("report.drift.cup", label(most))
				: Messages.of("report.drift.cups", label(most), alike.size())).words("  " + Messages.of("report.drift.layer"))
				.figures(ShownUnit.symbol()).words(Messages.of("report.drift.change"));
		layers(most).forEach(layer -> table.row("  " + layer.layer().name(), LengthWords.figure(layer.layer().thickness()),
				change(layer.change())));
		if (!most.unknown().isEmpty()) {
			table.note(Messages.of("report.drift.unknown",
					most.unknown().stream().map(UnknownLayer::toString).collect(Collectors.joining(", "))));
		}
		return table.table();
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
		case SURELY_WITHIN -> Messages.of("report.drift.within");
		case MAY_EXCEED -> Messages.of("report.drift.may");
		case SURELY_EXCEEDS -> Messages.of("report.drift.exceeds");
		}).orElse(Messages.of("report.drift.nothing"));
		return key.complete() || key.known().isEmpty() ? words : Messages.of("report.drift.asFar", words);
	}

	private String label(KeyDrift key) {
		return Labels.ofKey(drift.plan(), key.key());
	}

	/** Roughly, or as fine as film where it is known to within a tenth of a thou; rounded outward, so that it stays true. */
	private static String change(HeightChange change) {
		boolean finely = change.high().minus(change.low()).isShorterThan(LengthWords.roughStep());
		Length step = finely ? LengthWords.step() : LengthWords.roughStep();
		return Messages.of("report.fromTo", LengthWords.signed(down(change.low(), step)),
				LengthWords.signed(down(change.high().negated(), step).negated()));
	}

	private static Length down(Length length, Length step) {
		return step.times(Math.floorDiv(length.nanometres(), step.nanometres()));
	}

	private static String climate(Climate climate) {
		return Figures.plain(climate.celsius()) + " \u00b0C " + Figures.plain(climate.relativeHumidity()) + " %RH";
	}
}
