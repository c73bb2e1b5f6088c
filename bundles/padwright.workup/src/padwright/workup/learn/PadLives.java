package padwright.workup.learn;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

import padwright.engine.learning.GammaPool;
import padwright.engine.learning.GammaPool.Exposure;
import padwright.engine.learning.Learned;
import padwright.engine.learning.LifeBracket;
import padwright.engine.learning.NormalPool;
import padwright.engine.learning.NormalPool.Estimate;
import padwright.engine.learning.WeibullLife;
import padwright.model.plan.PadState;
import padwright.model.plan.Round;
import padwright.model.plan.Saliva;
import padwright.model.stock.Pad;
import padwright.workup.forecast.PastService;
import padwright.workup.learn.LearnedFigure.Topic;
import padwright.workup.learn.PlanFacts.FeltGap;
import padwright.workup.learn.PlanFacts.PadSeen;
import padwright.workup.learn.PlanFacts.Visit;
import padwright.workup.parts.Labels;
import padwright.workup.service.KeyJob;
import padwright.workup.solve.LeafReading;
import padwright.workup.words.Phrase;

/** What became of pads from service to service: when they tore, and whether those that were left level stayed so. */
final class PadLives {

	private static final double DAYS_IN_A_YEAR = 365.25;
	/** An interval of nine in ten is this many standard errors wide. */
	private static final double WIDTH = 2 * 1.6448536;

	private record Place(String player, String instrument, String key) {
	}

	private record Kept(String article, Optional<Saliva> saliva, LocalDate fitted, LocalDate seen, boolean level, List<FeltGap> left) {
	}

	private record Worn(String article, Optional<Saliva> saliva) {

		private static final Comparator<Worn> ORDER = Comparator.comparing(Worn::article)
				.thenComparing(Worn::saliva, SalivaPhrase.ORDER);

		private Phrase phrase() {
			return Phrase.of("learn.articleSaliva", article, SalivaPhrase.of(saliva));
		}
	}

	private final Map<Worn, List<LifeBracket>> lives = new TreeMap<>(Worn.ORDER);
	private final Map<String, List<Exposure>> openings = new TreeMap<>();
	private final Map<Place, Kept> pads = new LinkedHashMap<>();
	private final FirstWeeks settled = new FirstWeeks();

	/** By how much gaps changed in the first weeks. */
	List<LearnedFigure> settling() {
		return settled.figures();
	}

	static PadLives of(Collection<PlanFacts> plans) {
		PadLives lives = new PadLives();
		plans.stream().flatMap(plan -> plan.visit().stream()).sorted(Comparator.comparing(Visit::date)).forEach(lives::add);
		lives.pads.values().forEach(lives::endUnseen);
		return lives;
	}

	/** What one plan tells. */
	static Visit visit(PastService service) {
		List<PadSeen> pads = new ArrayList<>();
		for (KeyJob job : service.plan().jobs()) {
			Optional<Pad> pad = job.fitting().pad();
			if (job.key().isPresent() && pad.isPresent()) {
				pads.add(new PadSeen(job.name(), Labels.of(pad.get()), PastService.isNewPad(job),
						PastService.isFound(job, PadState.TORN),
						job.allRounds().stream().findFirst().map(round -> isLevel(Optional.of(round))),
						isLevel(job.allRounds().stream().reduce((earlier, later) -> later)),
						job.allRounds().stream().findFirst().map(round -> FeltGaps.of(job, round)).orElse(List.of()),
						job.allRounds().stream().reduce((earlier, later) -> later).map(round -> FeltGaps.of(job, round))
								.orElse(List.of())));
			}
		}
		return new Visit(service.date(), service.player(), service.instrument(), service.saliva(), service.torn(), pads);
	}

	private void add(Visit visit) {
		for (PadSeen pad : visit.pads()) {
			Place place = new Place(visit.player(), visit.instrument(), pad.key());
			Kept before = pads.get(place);
			if (before != null) {
				look(before, pad, visit.date());
				settled.look(before.article(), visit.instrument(), before.fitted(), before.left(), pad, visit.date());
			}
			pads.put(place, after(before, pad, visit.saliva(), visit.date()));
		}
	}

	private static Kept after(Kept before, PadSeen pad, Optional<Saliva> saliva, LocalDate today) {
		if (before == null || pad.isNew()) {
			return new Kept(pad.article(), saliva, today, today, pad.leftLevel(), pad.left());
		}
		return new Kept(before.article(), saliva, before.fitted(), today, pad.leftLevel(), pad.left());
	}

	private void look(Kept before, PadSeen pad, LocalDate today) {
		double seen = years(before.fitted(), before.seen());
		double now = years(before.fitted(), today);
		if (now > seen && pad.isTorn()) {
			lives(before).add(new LifeBracket(seen, now));
		} else if (pad.isNew()) {
			endUnseen(before);
		}
		if (now > seen && before.level() && !pad.isNew()) {
			pad.foundLevel().ifPresent(found -> openings.computeIfAbsent(before.article(), unseen -> new ArrayList<>())
					.add(new Exposure(found ? 0 : 1, now - seen)));
		}
	}

	/** A pad that was whole when it was seen last. */
	private void endUnseen(Kept pad) {
		double seen = years(pad.fitted(), pad.seen());
		if (seen > 0) {
			lives(pad).add(new LifeBracket(seen, Double.POSITIVE_INFINITY));
		}
	}

	private List<LifeBracket> lives(Kept pad) {
		return lives.computeIfAbsent(new Worn(pad.article(), pad.saliva()), unseen -> new ArrayList<>());
	}

	/** No leaf slides at any hour that was felt. */
	private static boolean isLevel(Optional<Round> round) {
		List<LeafReading> readings = round.map(LeafReading::of).orElse(List.of());
		return !readings.isEmpty() && readings.stream().allMatch(reading -> reading.slides().isEmpty());
	}

	private static double years(LocalDate from, LocalDate to) {
		return ChronoUnit.DAYS.between(from, to) / DAYS_IN_A_YEAR;
	}

	/** By article and saliva, each by itself; then drawn toward each other, where there are enough of them. */
	List<LearnedFigure> lives() {
		List<LearnedFigure> own = lives.entrySet().stream().map(group -> life(group.getKey().phrase(), group.getValue())).toList();
		List<LearnedFigure> told = own.stream().filter(figure -> figure.figure().isPresent()).toList();
		List<LearnedFigure> all = new ArrayList<>(own);
		if (told.size() >= NormalPool.LEAST_GROUPS) {
			NormalPool pool = new NormalPool(told.stream().map(PadLives::estimate).toList());
			told.forEach(figure -> all.add(pooled(figure, pool, told.size())));
		}
		return all;
	}

	private static LearnedFigure life(Phrase of, List<LifeBracket> brackets) {
		long torn = brackets.stream().filter(LifeBracket::isFailed).count();
		Phrase evidence = Phrase.of("learn.lives", brackets.size(), torn);
		return torn < WeibullLife.LEAST_FAILURES
				? new LearnedFigure(Topic.LIFE, of, Optional.empty(), Phrase.of("learn.fewTorn", evidence))
				: LearnedFigure.of(Topic.LIFE, of, new WeibullLife(brackets).median(), evidence);
	}

	private static Estimate estimate(LearnedFigure figure) {
		Learned life = figure.figure().orElseThrow();
		return new Estimate(StrictMath.log(life.middle()),
				Math.max(1e-6, StrictMath.log(life.high() / life.low()) / WIDTH));
	}

	private static LearnedFigure pooled(LearnedFigure figure, NormalPool pool, int groups) {
		Estimate own = estimate(figure);
		double middle = pool.pooled(own);
		double reach = pool.error(own) * WIDTH / 2;
		return new LearnedFigure(Topic.POOLED_LIFE, figure.of(), Optional.of(new Learned(StrictMath.exp(middle - reach),
				StrictMath.exp(middle), StrictMath.exp(middle + reach))), Phrase.of("learn.groups", groups));
	}

	/** Pads that were left level and found open. */
	List<LearnedFigure> openings() {
		return openings.entrySet().stream().map(group -> opening(Phrase.plain(group.getKey()), group.getValue())).toList();
	}

	private static LearnedFigure opening(Phrase article, List<Exposure> looks) {
		int opened = looks.stream().mapToInt(Exposure::count).sum();
		Phrase evidence = Phrase.of("learn.looks", looks.size(), opened);
		Exposure together = new Exposure(opened, looks.stream().mapToDouble(Exposure::years).sum());
		return looks.size() < ShopLearning.LEAST_LOOKS
				? new LearnedFigure(Topic.OPENING, article, Optional.empty(), Phrase.of("learn.fewLooks", evidence))
				: LearnedFigure.of(Topic.OPENING, article, new GammaPool(List.of(together)).rate(together), evidence);
	}
}
