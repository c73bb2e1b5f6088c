package padwright.workup.choose;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

import padwright.engine.length.Length;
import padwright.model.Lengths;
import padwright.model.plan.Fitting;
import padwright.model.plan.PlanFactory;
import padwright.model.stock.Assortment;
import padwright.model.stock.Backing;
import padwright.model.stock.Pad;
import padwright.model.stock.Preference;
import padwright.model.stock.Rule;
import padwright.model.stock.RuleSeverity;
import padwright.model.stock.Stock;
import padwright.model.stocks.PadFigures;
import padwright.model.systems.EffectiveKey;
import padwright.workup.rules.RuleEvaluation;
import padwright.workup.rules.ShopRules;
import padwright.workup.service.CupFit;
import padwright.workup.service.KeyJob;
import padwright.workup.solve.HeightWork;

/** The pads of a stock, tried in the cup of one key. */
final class CandidatePads {

	/** Heaviest reasons first, and of like weight those for it before those against. */
	private static final Comparator<Reason> HEAVIEST =
			Comparator.comparing((Reason reason) -> reason.weight().abs()).thenComparing(Reason::isFor).reversed();
	/** What can go in before what cannot; then by weight; then the cheaper one. The rest stays in the stock's order. */
	private static final Comparator<Candidate> BEST = Comparator.comparing(Candidate::fits)
			.thenComparing(Candidate::weight).reversed()
			.thenComparing(candidate -> candidate.pad().getPrice(), Comparator.nullsLast(Comparator.naturalOrder()));

	private final Stock stock;
	private final KeyJob job;

	private CandidatePads(Stock stock, KeyJob job) {
		this.stock = stock;
		this.job = job;
	}

	static KeyChoice of(Stock stock, KeyJob job) {
		CandidatePads candidates = new CandidatePads(stock, job);
		return new KeyChoice(job, stock.getPads().stream().map(candidates::candidate).sorted(BEST).toList());
	}

	private Candidate candidate(Pad pad) {
		Optional<Backing> disc = PadFigures.needsBacking(pad) ? backing() : Optional.empty();
		Fitting fitting = PlanFactory.eINSTANCE.createFitting();
		fitting.setPad(pad);
		fitting.setBacking(disc.orElse(null));
		KeyJob trial = job.fitted(fitting);
		Optional<Length> cup = job.key().flatMap(EffectiveKey::cupDiameter);
		Optional<Length> diameter = cup.flatMap(width -> diameter(pad.getDiameters(), width));
		List<Rule> broken = ShopRules.rules(stock).stream()
				.filter(rule -> rule.getText() != null && !ShopRules.isOfPlan(rule.getCondition())
						&& RuleEvaluation.holds(rule.getCondition(), trial)
						&& !RuleEvaluation.holds(rule.getCondition(), job.fitted(PlanFactory.eINSTANCE.createFitting())))
				.toList();
		return new Candidate(pad, disc, diameter, reasons(trial), broken.stream().map(Rule::getText).toList(),
				hindrance(trial, cup, diameter, broken));
	}

	/** The one that the row or the plan uses, else the first in stock. */
	private Optional<Backing> backing() {
		return job.fitting().backing().or(() -> stock.getBackings().stream().findFirst());
	}

	private static Optional<Length> diameter(Assortment diameters, Length cup) {
		return diameters == null ? Optional.empty() : CupFit.diameter(diameters, cup)
				.flatMap(size -> Lengths.exact(size.getSize(), Lengths.unit(diameters.getUnit(), diameters)));
	}

	private List<Reason> reasons(KeyJob trial) {
		return ShopRules.preferences(stock).stream()
				.filter(each -> each.getText() != null && each.getWeight() != null)
				.filter(each -> RuleEvaluation.holds(each.getCondition(), trial))
				.map(CandidatePads::reason).sorted(HEAVIEST).toList();
	}

	private static Reason reason(Preference preference) {
		return new Reason(preference.getText(),
				preference.isAgainst() ? preference.getWeight().negate() : preference.getWeight());
	}

	private Optional<String> hindrance(KeyJob trial, Optional<Length> cup, Optional<Length> diameter,
			List<Rule> broken) {
		Pad pad = trial.fitting().pad().orElseThrow();
		if (cup.isPresent() && pad.getDiameters() != null && diameter.isEmpty()) {
			return Optional.of("no diameter in stock for the cup");
		}
		if (PadFigures.needsBacking(pad) && trial.fitting().backing().isEmpty()) {
			return Optional.of("needs a backing disc, and none is in stock");
		}
		if (HeightWork.of(trial).filter(work -> work.target().signum() < 0).isPresent()) {
			return Optional.of("too thick for the cup");
		}
		return broken.stream().filter(rule -> rule.getSeverity() == RuleSeverity.ERROR).map(Rule::getText).findFirst();
	}
}
