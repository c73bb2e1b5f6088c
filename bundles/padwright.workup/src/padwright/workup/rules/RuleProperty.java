package padwright.workup.rules;

import java.util.List;
import java.util.function.Function;

import padwright.workup.service.KeyJob;

/**
 * Something of a key in a plan, or of the plan as a whole, that a rule can ask about.
 *
 * @param name dotted, as in {@code shim.material}
 * @param type what it is compared with
 * @param ofPlan whether it is the same for every key of a plan
 * @param names the names it can have; empty where any article, material or key may be meant
 * @param values what it is for a key: names as Strings, quantities as BigDecimal in the base unit of the type; empty
 *               where unknown
 */
record RuleProperty(String name, PropertyType type, boolean ofPlan, List<String> names,
		Function<KeyJob, List<?>> values) {

	/** The one property that is compared with names of pad kinds. */
	static final String PAD_KIND = "pad.kind";

	RuleProperty withValues(Function<KeyJob, List<?>> others) {
		return new RuleProperty(name, type, ofPlan, names, others);
	}
}
