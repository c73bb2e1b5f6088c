package padwright.paper.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import padwright.engine.coupling.Coupling;
import padwright.engine.coupling.CouplingGraph;
import padwright.engine.coupling.Regulation;
import padwright.engine.length.Length;
import padwright.model.plan.Agreement;
import padwright.model.plan.Deposit;
import padwright.model.plan.Estimate;
import padwright.model.plan.Invoice;
import padwright.model.plan.JobEntry;
import padwright.model.plan.Plan;
import padwright.model.plan.StageReached;
import padwright.model.systems.EffectiveKey;
import padwright.paper.card.BenchCard;
import padwright.paper.card.BenchCard.DiaryLine;
import padwright.paper.page.PageFact;
import padwright.paper.card.CardKey;
import padwright.paper.card.CardRegulation;
import padwright.paper.words.Messages;
import padwright.workup.cautions.Cautions;
import padwright.workup.job.JobRecord;
import padwright.workup.job.JobWords;
import padwright.workup.job.WaitWords;
import padwright.workup.parts.Labels;
import padwright.workup.regulate.AdjustmentWords;
import padwright.workup.regulate.FoundLight;
import padwright.workup.regulate.PlanCouplings;
import padwright.workup.service.ServicePlan;
import padwright.workup.solve.KeySolution;
import padwright.workup.solve.PlanSolution;
import padwright.workup.words.ClockWords;
import padwright.workup.words.Days;
import padwright.workup.words.LengthWords;

/** The bench card of a solved plan. */
public final class PlanBenchCard {

	private static final List<Class<? extends JobEntry>> MONEY =
			List.of(Estimate.class, Agreement.class, Deposit.class, Invoice.class);

	private final ServicePlan plan;
	private final PlanSolution solution;
	private final CouplingGraph couplings;

	private PlanBenchCard(PlanSolution solution) {
		this.plan = solution.plan();
		this.solution = solution;
		this.couplings = PlanCouplings.graph(plan);
	}

	/**
	 * The card, keys in the order of work.
	 *
	 * @throws IllegalArgumentException if the plan has no row, or its couplings run in a circle
	 */
	public static BenchCard of(PlanSolution solution) {
		return new PlanBenchCard(solution).card();
	}

	private BenchCard card() {
		Plan source = source();
		return new BenchCard(Messages.of("card.title"), PlanHead.instrument(plan),
				PlanHead.serial(plan), Labels.of(source),
				Optional.ofNullable(source.getDate()),
				facts(), ClockWords.inWords(plan.plan().getSystem()), keys(), regulations(), diary(), Cautions.of(plan));
	}

	private List<PageFact> facts() {
		List<PageFact> facts = new ArrayList<>();
		facts.add(new PageFact(Messages.of("fact.seat"), LengthWords.exact(plan.tolerance())));
		plan.bed().ifPresent(bed -> facts.add(new PageFact(Messages.of("fact.bed"),
				Messages.of("fact.bedRange", bed.least(), bed.most()))));
		Optional.ofNullable(plan.plan().getFitting())
				.ifPresent(fitting -> facts.add(new PageFact(Messages.of("fact.fit"), FitText.of(fitting))));
		plan.stock().ifPresent(stock -> facts.add(new PageFact(Messages.of("fact.stock"), Labels.of(stock))));
		addJob(JobRecord.of(source()), facts);
		return facts;
	}

	private Plan source() {
		return plan.plan();
	}

	/** What whoever takes the job over asks first: how far it is and by when it is promised. */
	private void addJob(JobRecord record, List<PageFact> facts) {
		record.last(StageReached.class).ifPresent(stage -> facts.add(new PageFact(Messages.of("fact.doneUpTo"), JobRecord.label(source(), stage)
				+ Optional.ofNullable(stage.getDate()).map(day -> ", " + Days.of(day)).orElse("")
				+ Optional.ofNullable(stage.getHand()).map(hand -> ", " + Messages.of("fact.by", hand)).orElse(""))));
		record.waiting().forEach(waiting -> facts.add(new PageFact(Messages.of("fact.waits"), WaitWords.of(waiting))));
		record.delivered().ifPresentOrElse(day -> facts.add(new PageFact(Messages.of("fact.handedOver"), Days.of(day))),
				() -> record.due().ifPresent(day -> facts.add(new PageFact(Messages.of("fact.promised"), Days.of(day)))));
	}

	/** Without what it costs, which is none of the bench's business. */
	private List<DiaryLine> diary() {
		return JobRecord.of(source()).all(JobEntry.class).stream()
				.filter(entry -> MONEY.stream().noneMatch(kind -> kind.isInstance(entry)))
				.map(entry -> new DiaryLine(when(entry), JobWords.of(plan, entry))).toList();
	}

	private static String when(JobEntry entry) {
		return Stream.of(Optional.ofNullable(entry.getDate()).map(Days::of), Optional.ofNullable(entry.getHand()))
				.flatMap(Optional::stream).collect(Collectors.joining(" "));
	}

	private List<CardKey> keys() {
		List<String> order = couplings.orderOfWork();
		return solution.keys().stream().filter(key -> key.job().key().isPresent())
				.sorted(Comparator.comparingInt(key -> order.indexOf(key.job().name())))
				.map(this::key).toList();
	}

	private CardKey key(KeySolution key) {
		List<Coupling> driven = couplings.couplingsOf(key.job().name());
		return SolvedKey.of(key, driven.stream().map(coupling -> label(coupling.driven())).toList(), !driven.isEmpty()
				&& driven.stream().allMatch(coupling -> FoundLight.left(plan, coupling).isPresent()));
	}

	private List<CardRegulation> regulations() {
		return couplings.couplingsInOrderOfWork().stream()
				.map(coupling -> FoundLight.left(plan, coupling).map(left -> set(coupling, left)).orElseGet(() -> open(coupling)))
				.toList();
	}

	private CardRegulation set(Coupling coupling, Length left) {
		return new CardRegulation(label(coupling.driver()), label(coupling.driven()),
				FoundLight.at(plan, coupling).map(PlanBenchCard::found).map(found -> Messages.of("card.left", found, left))
				.orElseGet(() -> Messages.of("card.leftOnly", left)), "", true);
	}

	private CardRegulation open(Coupling coupling) {
		return new CardRegulation(label(coupling.driver()), label(coupling.driven()),
				FoundLight.at(plan, coupling).map(PlanBenchCard::found).orElse(""),
				FoundLight.at(plan, coupling).map(light -> AdjustmentWords.of(light.adjustment())).orElse(""));
	}

	private static String found(Regulation light) {
		return Messages.of(light.side() == Regulation.Side.DRIVER ? "card.lightAtDriver" : "card.lightAtDriven", light.light());
	}

	private String label(String key) {
		return plan.system().keys().stream().filter(effective -> effective.name().equals(key)).findFirst()
				.map(EffectiveKey::label).orElse(key);
	}
}
