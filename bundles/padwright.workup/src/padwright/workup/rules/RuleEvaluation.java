package padwright.workup.rules;

import java.math.BigDecimal;
import java.util.List;

import padwright.model.stock.Both;
import padwright.model.stock.Comparison;
import padwright.model.stock.Either;
import padwright.model.stock.Expression;
import padwright.model.stock.NameValue;
import padwright.model.stock.Negation;
import padwright.model.stock.NumberValue;
import padwright.model.stock.Operator;
import padwright.model.stock.Value;
import padwright.workup.service.KeyJob;

/**
 * Whether the condition of a rule holds for a key. A comparison with something that is not known holds for neither
 * answer, nor does one that is wrong in itself: a rule speaks up only on what it knows.
 */
public final class RuleEvaluation {

	private RuleEvaluation() {
	}

	public static boolean holds(Expression condition, KeyJob job) {
		if (condition instanceof Either either) {
			return holds(either.getLeft(), job) || holds(either.getRight(), job);
		}
		if (condition instanceof Both both) {
			return holds(both.getLeft(), job) && holds(both.getRight(), job);
		}
		if (condition instanceof Negation negation) {
			return negation.getOperand() != null && !holds(negation.getOperand(), job);
		}
		return condition instanceof Comparison comparison && holds(comparison, job);
	}

	private static boolean holds(Comparison comparison, KeyJob job) {
		return RuleProperties.byName(comparison.getProperty())
				.filter(property -> comparison.getValue() != null)
				.map(property -> holds(property, comparison.getOperator(), comparison.getValue(), job)).orElse(false);
	}

	private static boolean holds(RuleProperty property, Operator operator, Value value, KeyJob job) {
		List<?> known = property.values().apply(job);
		if (property.type().isNamed() && value instanceof NameValue name) {
			return switch (operator) {
			case IS -> known.contains(name.getName());
			case IS_NOT -> !known.isEmpty() && !known.contains(name.getName());
			default -> false;
			};
		}
		return value instanceof NumberValue number && property.type().inBaseUnit(number.getNumber(), number.getUnit())
				.map(bound -> known.stream().anyMatch(quantity -> compares((BigDecimal) quantity, operator, bound)))
				.orElse(false);
	}

	private static boolean compares(BigDecimal quantity, Operator operator, BigDecimal bound) {
		int order = quantity.compareTo(bound);
		return switch (operator) {
		case IS -> order == 0;
		case IS_NOT -> order != 0;
		case BELOW -> order < 0;
		case AT_MOST -> order <= 0;
		case ABOVE -> order > 0;
		case AT_LEAST -> order >= 0;
		};
	}
}
