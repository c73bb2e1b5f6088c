package padwright.workup.rules;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

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
 * Whether the condition of a rule holds for a key. A comparison with something that is not known is neither true
 * nor false, nor is one that is wrong in itself, and so is what depends on it: a rule speaks up only on what it knows.
 */
public final class RuleEvaluation {

	private RuleEvaluation() {
	}

	/** False where it does not hold, and where it is not known. */
	public static boolean holds(Expression condition, KeyJob job) {
		return truth(condition, job).orElse(false);
	}

	/** Whether it holds; nothing where that is not known. */
	private static Optional<Boolean> truth(Expression condition, KeyJob job) {
		if (condition instanceof Either either) {
			return decided(true, truth(either.getLeft(), job), truth(either.getRight(), job));
		}
		if (condition instanceof Both both) {
			return decided(false, truth(both.getLeft(), job), truth(both.getRight(), job));
		}
		if (condition instanceof Negation negation) {
			return truth(negation.getOperand(), job).map(holds -> !holds);
		}
		return condition instanceof Comparison comparison ? truth(comparison, job) : Optional.empty();
	}

	/** One side that decides is enough; otherwise both must be known. */
	private static Optional<Boolean> decided(boolean deciding, Optional<Boolean> left, Optional<Boolean> right) {
		if (left.equals(Optional.of(deciding)) || right.equals(Optional.of(deciding))) {
			return Optional.of(deciding);
		}
		return left.isPresent() && right.isPresent() ? Optional.of(!deciding) : Optional.empty();
	}

	private static Optional<Boolean> truth(Comparison comparison, KeyJob job) {
		return RuleProperties.byName(comparison.getProperty()).filter(property -> comparison.getValue() != null)
				.flatMap(property -> truth(property, comparison.getOperator(), comparison.getValue(), job));
	}

	private static Optional<Boolean> truth(RuleProperty property, Operator operator, Value value, KeyJob job) {
		List<?> known = property.values().apply(job);
		if (known.isEmpty()) {
			return Optional.empty();
		}
		if (property.type().isNamed()) {
			return value instanceof NameValue name ? sameness(operator, known.contains(name.getName()))
					: Optional.empty();
		}
		return value instanceof NumberValue number
				? property.type().inBaseUnit(number.getNumber(), number.getUnit()).map(bound -> known.stream()
						.anyMatch(quantity -> compares((BigDecimal) quantity, operator, bound)))
				: Optional.empty();
	}

	private static Optional<Boolean> sameness(Operator operator, boolean isSame) {
		return switch (operator) {
		case IS -> Optional.of(isSame);
		case IS_NOT -> Optional.of(!isSame);
		default -> Optional.empty();
		};
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
