package padwright.paper.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

import padwright.engine.coupling.CouplingGraph;
import padwright.engine.coupling.Regulation;
import padwright.engine.length.Length;
import padwright.engine.length.LengthUnit;
import padwright.model.plan.Plan;
import padwright.model.systems.EffectiveKey;
import padwright.paper.card.BenchCard;
import padwright.paper.page.PageFact;
import padwright.paper.card.CardKey;
import padwright.paper.card.CardRegulation;
import padwright.workup.cautions.Cautions;
import padwright.workup.parts.Labels;
import padwright.workup.regulate.FoundLight;
import padwright.workup.regulate.PlanCouplings;
import padwright.workup.service.ServicePlan;
import padwright.workup.solve.KeySolution;
import padwright.workup.solve.PlanSolution;
import padwright.workup.words.ClockWords;

/** The bench card of a solved plan. */
public final class PlanBenchCard {

	private static final String TITLE = "Bench card";

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
		Plan source = plan.plan();
		return new BenchCard(TITLE, PlanHead.instrument(plan),
				PlanHead.serial(plan), Labels.of(source),
				Optional.ofNullable(source.getDate()),
				facts(), ClockWords.twelveLooksAt(plan.plan().getSystem()), keys(), regulations(), Cautions.of(plan));
	}

	private List<PageFact> facts() {
		List<PageFact> facts = new ArrayList<>();
		facts.add(new PageFact("Seat within", plan.tolerance().toString()));
		plan.bed().ifPresent(bed -> facts.add(new PageFact("Bed", bed.least() + " to " + bed.most())));
		Optional.ofNullable(plan.plan().getFitting())
				.ifPresent(fitting -> facts.add(new PageFact("Fit", FitText.of(fitting))));
		plan.stock().ifPresent(stock -> facts.add(new PageFact("Stock", Labels.of(stock))));
		return facts;
	}

	private List<CardKey> keys() {
		List<String> order = couplings.orderOfWork();
		return solution.keys().stream().filter(key -> key.job().key().isPresent())
				.sorted(Comparator.comparingInt(key -> order.indexOf(key.job().name())))
				.map(this::key).toList();
	}

	private CardKey key(KeySolution key) {
		List<String> closes = couplings.couplingsOf(key.job().name()).stream().map(coupling -> label(coupling.driven()))
				.toList();
		return SolvedKey.of(key, closes);
	}

	private List<CardRegulation> regulations() {
		return couplings.couplingsInOrderOfWork().stream()
				.map(coupling -> new CardRegulation(label(coupling.driver()), label(coupling.driven()),
						FoundLight.at(plan, coupling).map(PlanBenchCard::found).orElse(""),
						FoundLight.at(plan, coupling).map(light -> light.adjustment().inWords()).orElse("")))
				.toList();
	}

	private static String found(Regulation light) {
		return light.light() + " light at " + light.side().name().toLowerCase(Locale.ROOT);
	}

	private String label(String key) {
		return plan.system().keys().stream().filter(effective -> effective.name().equals(key)).findFirst()
				.map(EffectiveKey::label).orElse(key);
	}

	static String thou(Length length) {
		return length.in(LengthUnit.THOU, 2).toPlainString();
	}
}
