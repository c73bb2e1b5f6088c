package padwright.workup.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

import padwright.model.stock.Both;
import padwright.model.stock.Comparison;
import padwright.model.stock.Either;
import padwright.model.stock.Expression;
import padwright.model.stock.NameValue;
import padwright.model.stock.Negation;
import padwright.model.stock.Operator;
import padwright.model.stock.StockFactory;
import padwright.workup.DemoPlan;

/** Conditions by their truth tables; how texts of conditions are read is tested with the language. */
class RuleEvaluationTest {

	private static final StockFactory STOCK = StockFactory.eINSTANCE;

	private final DemoPlan demo = new DemoPlan();

	RuleEvaluationTest() {
		demo.row(demo.key("A"));
	}

	private boolean holds(Expression condition) {
		return RuleEvaluation.holds(condition, demo.service().jobs().get(0));
	}

	private static Comparison truth(boolean truth) {
		return comparison("key", Operator.IS, truth ? "A" : "B");
	}

	private static Comparison comparison(String property, Operator operator, String name) {
		NameValue value = STOCK.createNameValue();
		value.setName(name);
		Comparison comparison = STOCK.createComparison();
		comparison.setProperty(property);
		comparison.setOperator(operator);
		comparison.setValue(value);
		return comparison;
	}

	@Test
	void bothEitherAndNotHoldByTheirTruthTables() {
		for (boolean left : new boolean[] { true, false }) {
			for (boolean right : new boolean[] { true, false }) {
				Both both = STOCK.createBoth();
				both.setLeft(truth(left));
				both.setRight(truth(right));
				assertEquals(left && right, holds(both));
				Either either = STOCK.createEither();
				either.setLeft(truth(left));
				either.setRight(truth(right));
				assertEquals(left || right, holds(either));
			}
			Negation negation = STOCK.createNegation();
			negation.setOperand(truth(left));
			assertEquals(!left, holds(negation));
		}
	}

	@Test
	void whatIsNotWrittenOutHoldsNever() {
		assertEquals(false, holds(null));
		assertEquals(false, holds(STOCK.createComparison()));
		assertEquals(false, holds(STOCK.createNegation()));
		assertEquals(false, holds(STOCK.createBoth()));
		assertEquals(false, holds(STOCK.createEither()));
	}

	@Test
	void aPropertyOfSeveralNamesIsEachOfThem() {
		assertEquals(true, holds(comparison("system", Operator.IS, "Demo")));
		assertEquals(false, holds(comparison("system", Operator.IS_NOT, "Demo")));
		assertEquals(true, holds(comparison("system", Operator.IS_NOT, "Other")));
	}

	@Test
	void aNameIsNeverMoreOrLess() {
		for (Operator operator : Operator.VALUES) {
			assertEquals(operator == Operator.IS, holds(comparison("key", operator, "A")), operator.getLiteral());
		}
	}
}
