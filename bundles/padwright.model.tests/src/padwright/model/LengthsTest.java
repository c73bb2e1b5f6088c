package padwright.model;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

import org.junit.jupiter.api.Test;

import padwright.engine.length.Length;
import padwright.engine.length.LengthUnit;
import padwright.model.plan.Document;
import padwright.model.plan.Plan;
import padwright.model.plan.PlanFactory;
import padwright.model.plan.ThicknessRow;

class LengthsTest {

	private static final PlanFactory PLANS = PlanFactory.eINSTANCE;

	private final Document document = PLANS.createDocument();
	private final Plan plan = PLANS.createPlan();

	LengthsTest() {
		document.getPlans().add(plan);
	}

	@Test
	void theUnitIsTheMeasuresOrTheDocumentsOrThou() {
		assertEquals(Optional.of(Length.thou("2")), Lengths.of(Measure.valueOf("2"), plan));
		document.setUnit(LengthUnit.MILLIMETRE);
		assertEquals(Optional.of(Length.millimetres("2")), Lengths.of(Measure.valueOf("2"), plan));
		assertEquals(Optional.of(Length.thou("2")), Lengths.of(Measure.valueOf("2 thou"), plan));
		assertEquals(Optional.of(Length.thou("2")), Lengths.of(Measure.valueOf("2"), PLANS.createPlan()));
	}

	@Test
	void lengthsAreWholeNanometres() {
		assertEquals(Optional.of(Length.ofNanometres(1)),
				Lengths.exact(new BigDecimal("0.001"), LengthUnit.MICROMETRE));
		assertEquals(Optional.empty(), Lengths.exact(new BigDecimal("0.0001"), LengthUnit.MICROMETRE));
		assertEquals(Optional.empty(), Lengths.exact(new BigDecimal("0.00001"), LengthUnit.THOU));
		assertEquals(Optional.empty(), Lengths.exact(null, LengthUnit.THOU));
	}

	@Test
	void lengthsEndAtAKilometre() {
		BigDecimal kilometre = new BigDecimal("1000000");
		assertEquals(Optional.of(Lengths.LONGEST), Lengths.exact(kilometre, LengthUnit.MILLIMETRE));
		assertEquals(Optional.of(Lengths.LONGEST.negated()), Lengths.exact(kilometre.negate(), LengthUnit.MILLIMETRE));
		assertEquals(Optional.empty(),
				Lengths.exact(kilometre.add(new BigDecimal("0.000001")), LengthUnit.MILLIMETRE));
		assertEquals(Optional.empty(), Lengths.exact(new BigDecimal("1e400"), LengthUnit.MILLIMETRE));
	}

	@Test
	void aRowHasTheLengthsThatCanBeKept() {
		ThicknessRow row = PLANS.createThicknessRow();
		row.getValues().addAll(List.of(new BigDecimal("7.5"), new BigDecimal("0.00001"), new BigDecimal("0.5")));
		assertEquals(List.of(Length.thou("7.5"), Length.thou("0.5")), Lengths.of(row));
		row.setUnit(LengthUnit.MILLIMETRE);
		assertEquals(List.of(Length.millimetres("7.5"), Length.millimetres("0.00001"), Length.millimetres("0.5")),
				Lengths.of(row));
		assertEquals(List.of(), Lengths.of((ThicknessRow) null));
	}
}
