package padwright.workup.money;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import padwright.engine.quote.Money;
import padwright.model.plan.Fitting;
import padwright.model.stock.Letterhead;
import padwright.model.stock.Pad;
import padwright.model.stock.Process;
import padwright.model.stock.ProcessStage;
import padwright.model.systems.EffectiveKey;
import padwright.workup.inspection.Recommendation;
import padwright.workup.inspection.RecommendedWork;
import padwright.workup.job.DoneAtKey;
import padwright.workup.job.JobRecord;
import padwright.workup.job.Letterheads;
import padwright.workup.parts.Labels;
import padwright.workup.service.EffectiveFitting;
import padwright.workup.service.KeyJob;
import padwright.workup.service.ServicePlan;
import padwright.workup.words.Phrase;

/**
 * An estimate drafted from what an inspection found: the pads that were not found sound, and all of them. Labour is what
 * the stages of the plan's process usually take, at the rate of the letterhead; of {@code fit} and {@code level} as much as
 * the share of pads. A draft: the technician knows what the instrument needs.
 *
 * @param options to choose from, the smaller one first
 * @param open what was found and is in no option, since it has no price
 */
public record EstimateDraft(List<Option> options, List<Phrase> open) {

	/** Stages whose time grows with the number of pads. */
	private static final Set<String> BY_PAD = Set.of("fit", "level");
	private static final BigDecimal MINUTES_IN_AN_HOUR = BigDecimal.valueOf(60);

	/** One way to go on. */
	public record Option(String name, Phrase label, List<Item> items) {

		public Option {
			items = List.copyOf(items);
		}
	}

	/** A line with the price of one. */
	public record Item(Phrase text, BigDecimal price, int count) {
	}

	public EstimateDraft {
		options = List.copyOf(options);
		open = List.copyOf(open);
	}

	/** Of a plan; without an option where nothing in it has a price. */
	public static EstimateDraft of(ServicePlan plan) {
		List<Phrase> open = new ArrayList<>();
		List<Pad> needed = plan.jobs().stream().filter(EstimateDraft::isNeeded)
				.flatMap(job -> job.fitting().pad().stream()).toList();
		List<Pad> all = pads(plan);
		List<Option> options = new ArrayList<>();
		add("needed", Phrase.of("draft.needed"), items(plan, needed, all.size(), open), options);
		if (all.size() > needed.size()) {
			add("all", Phrase.of("draft.all"), items(plan, all, all.size(), open), options);
		}
		RecommendedWork.ofInspection(plan).stream().map(EstimateDraft::told).forEach(open::add);
		return new EstimateDraft(options, open.stream().distinct().toList());
	}

	private static Phrase told(Recommendation work) {
		return Phrase.of("draft.at", work.where(), work.found());
	}

	private static void add(String name, Phrase label, List<Item> items, List<Option> options) {
		if (!items.isEmpty()) {
			options.add(new Option(name, label, items));
		}
	}

	private static boolean isNeeded(KeyJob job) {
		return DoneAtKey.isPadPlanned(job) && job.service().isSetFound();
	}

	/** For every cup the pad of its row, else that of the plan. */
	private static List<Pad> pads(ServicePlan plan) {
		Optional<Pad> usual = usual(plan.plan().getFitting());
		List<Pad> pads = new ArrayList<>();
		for (EffectiveKey key : plan.system().keys()) {
			if (key.cupDiameter().isPresent()) {
				plan.jobs().stream().filter(job -> job.name().equals(key.name())).findFirst()
						.flatMap(job -> job.fitting().pad()).or(() -> usual).ifPresent(pads::add);
			}
		}
		return pads;
	}

	private static Optional<Pad> usual(Fitting fitting) {
		return new EffectiveFitting(null, fitting).pad();
	}

	private static List<Item> items(ServicePlan plan, List<Pad> pads, int cups, List<Phrase> open) {
		Map<Pad, Integer> counts = new LinkedHashMap<>();
		pads.forEach(pad -> counts.merge(pad, 1, Integer::sum));
		List<Item> items = new ArrayList<>();
		counts.forEach((pad, count) -> {
			if (pad.getPrice() == null) {
				open.add(Phrase.plain(Labels.of(pad)));
			} else {
				items.add(new Item(Phrase.plain(Labels.of(pad)), Money.rounded(pad.getPrice()), count));
			}
		});
		labour(plan, pads.size(), cups).ifPresentOrElse(items::add, () -> open.add(Phrase.of("draft.labour")));
		return items;
	}

	private static Optional<Item> labour(ServicePlan plan, int pads, int cups) {
		Optional<Process> process = JobRecord.of(plan.plan()).process();
		Optional<BigDecimal> rate = Letterheads.of(plan).map(Letterhead::getRate);
		return process.flatMap(way -> rate.map(hour -> {
			BigDecimal minutes = way.getStages().stream().map(stage -> minutes(stage, pads, cups)).reduce(BigDecimal.ZERO,
					BigDecimal::add);
			return new Item(Phrase.of("draft.work", Labels.of(way)),
					Money.rounded(minutes.multiply(hour).divide(MINUTES_IN_AN_HOUR, 4, RoundingMode.HALF_UP)), 1);
		}));
	}

	private static BigDecimal minutes(ProcessStage stage, int pads, int cups) {
		if (stage.getMinutes() == null) {
			return BigDecimal.ZERO;
		}
		return BY_PAD.contains(stage.getName()) && cups > 0
				? stage.getMinutes().multiply(BigDecimal.valueOf(pads)).divide(BigDecimal.valueOf(cups), 0, RoundingMode.HALF_UP)
				: stage.getMinutes();
	}
}
