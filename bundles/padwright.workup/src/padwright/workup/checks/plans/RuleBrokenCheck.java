package padwright.workup.checks.plans;

import java.util.List;

import padwright.model.plan.PlanPackage;
import padwright.model.stock.Rule;
import padwright.model.stock.RuleSeverity;
import padwright.model.stock.Stock;
import padwright.workup.checks.Advice;
import padwright.workup.checks.Check;
import padwright.workup.checks.Findings;
import padwright.workup.checks.IssueCodes;
import padwright.workup.checks.Place;
import padwright.workup.checks.Severity;
import padwright.workup.rules.RuleEvaluation;
import padwright.workup.service.KeyJob;

/** The rules of the shop hold for each key. */
public final class RuleBrokenCheck extends Check<KeyJob> {

	public RuleBrokenCheck() {
		super(KeyJob.class);
	}

	@Override
	protected void check(KeyJob job, Findings findings) {
		List<Rule> rules = job.plan().stock().<List<Rule>>map(Stock::getRules).orElse(List.of());
		for (Rule rule : rules) {
			if (rule.getText() != null && RuleEvaluation.holds(rule.getCondition(), job)) {
				findings.add(severity(rule), IssueCodes.RULE_BROKEN,
						Place.of(job.service(), PlanPackage.Literals.KEY_SERVICE__KEY),
						new Advice("Key " + job.name(), rule.getText(), cure(rule)));
			}
		}
	}

	private static String cure(Rule rule) {
		return rule.getSeverity() == RuleSeverity.INFO ? "Nothing has to be done"
				: "Fit something else here, or change the rule in the stock";
	}

	private static Severity severity(Rule rule) {
		return switch (rule.getSeverity()) {
		case ERROR -> Severity.ERROR;
		case WARN -> Severity.WARNING;
		case INFO -> Severity.INFO;
		};
	}
}
