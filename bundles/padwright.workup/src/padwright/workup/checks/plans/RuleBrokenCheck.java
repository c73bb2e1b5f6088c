package padwright.workup.checks.plans;

import java.util.List;
import java.util.stream.Collectors;

import padwright.model.keysystem.KeySystemPackage;
import padwright.model.plan.PlanPackage;
import padwright.model.stock.Rule;
import padwright.model.stock.RuleSeverity;
import padwright.workup.checks.Advice;
import padwright.workup.checks.Check;
import padwright.workup.checks.Findings;
import padwright.workup.checks.IssueCodes;
import padwright.workup.checks.Place;
import padwright.workup.checks.Severity;
import padwright.workup.rules.RuleEvaluation;
import padwright.workup.rules.ShopRules;
import padwright.workup.service.KeyJob;
import padwright.workup.service.ServicePlan;
import padwright.workup.words.Phrase;

/**
 * The rules of the shop hold for each key. One that is about the plan as a whole, or is broken at many keys, is told
 * once.
 */
public final class RuleBrokenCheck extends Check<ServicePlan> {

	/** More keys are told in one finding. */
	private static final int FEW = 3;

	public RuleBrokenCheck() {
		super(ServicePlan.class);
	}

	@Override
	protected void check(ServicePlan plan, Findings findings) {
		for (Rule rule : plan.stock().map(ShopRules::rules).orElse(List.of())) {
			List<KeyJob> broken = plan.jobs().stream()
					.filter(job -> RuleEvaluation.holds(rule.getCondition(), job)).toList();
			if (rule.getText() != null && !broken.isEmpty()) {
				report(rule, plan, broken, findings);
			}
		}
	}

	private static void report(Rule rule, ServicePlan plan, List<KeyJob> broken, Findings findings) {
		boolean isOfPlan = ShopRules.isOfPlan(rule.getCondition());
		boolean isEverywhere = broken.size() > 1 && broken.size() == plan.jobs().size();
		if (isOfPlan || isEverywhere || broken.size() > FEW) {
			report(rule, what(isOfPlan, isEverywhere, plan, broken),
					Place.of(plan.plan(), KeySystemPackage.Literals.TITLED__NAME), findings);
		} else {
			broken.forEach(job -> report(rule, Phrase.of("rule-broken.key", job.name()),
					Place.of(job.service(), PlanPackage.Literals.KEY_SERVICE__KEY), findings));
		}
	}

	private static Phrase what(boolean isOfPlan, boolean isEverywhere, ServicePlan plan, List<KeyJob> broken) {
		if (isOfPlan) {
			return Phrase.of("rule-broken.plan");
		}
		return isEverywhere ? Phrase.of("rule-broken.everyKey") : keys(plan, broken);
	}

	private static Phrase keys(ServicePlan plan, List<KeyJob> broken) {
		List<KeyJob> others = plan.jobs().stream().filter(job -> !broken.contains(job)).toList();
		return others.size() <= FEW ? Phrase.of("rule-broken.allBut", names(others))
				: Phrase.of("rule-broken.keys", names(broken));
	}

	private static String names(List<KeyJob> jobs) {
		return jobs.stream().map(KeyJob::name).collect(Collectors.joining(", "));
	}

	private static void report(Rule rule, Phrase what, Place place, Findings findings) {
		findings.add(severity(rule), IssueCodes.RULE_BROKEN, place, new Advice(what, Phrase.plain(rule.getText()), cure(rule)));
	}

	private static Phrase cure(Rule rule) {
		if (rule.getSeverity() == RuleSeverity.INFO) {
			return Phrase.of("rule-broken.nothingToDo");
		}
		return ShopRules.isOfPlan(rule.getCondition()) ? Phrase.of("rule-broken.putRight")
				: Phrase.of("rule-broken.fitElse");
	}

	private static Severity severity(Rule rule) {
		return switch (rule.getSeverity()) {
		case ERROR -> Severity.ERROR;
		case WARN -> Severity.WARNING;
		case INFO -> Severity.INFO;
		};
	}
}
