package padwright.workup.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.Comparator;
import java.util.List;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EClassifier;
import org.eclipse.emf.ecore.EPackage;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.Test;

import padwright.engine.length.LengthUnit;
import padwright.model.Measure;
import padwright.model.keysystem.Key;
import padwright.model.keysystem.KeySystemFactory;
import padwright.model.keysystem.KeySystemPackage;
import padwright.model.keysystem.ToneHole;
import padwright.model.plan.Document;
import padwright.model.plan.KeyService;
import padwright.model.plan.PlanFactory;
import padwright.model.plan.PlanPackage;
import padwright.model.plan.Round;
import padwright.model.stock.StockPackage;
import padwright.workup.DemoPlan;

/** The checks judge models that were built in code and never were a text. */
class ModelChecksTest {

	private final DemoPlan demo = new DemoPlan();
	private final Key key = demo.key("A");
	private final KeyService row = demo.row(key);

	private List<Finding> findings() {
		return ModelChecks.check(demo.plan);
	}

	private Finding theOnly(String code) {
		List<Finding> all = findings();
		assertEquals(List.of(code), all.stream().map(Finding::code).toList());
		return all.get(0);
	}

	@Test
	void aPlanInOrderHasNone() {
		row.setStack(demo.thicknesses("2 2"));
		demo.felt(row, ". 0.5 . .");
		assertEquals(List.of(), findings());
		assertEquals(List.of(), ModelChecks.check(demo.system));
		assertEquals(List.of(), ModelChecks.check(demo.stock));
	}

	@Test
	void filmBeyondTheStockIsFoundAtTheBlank() {
		demo.plan.getFitting().getFilms().getThicknesses().getSizes().get(2).setQuantity(2);
		row.setStack(demo.thicknesses("2 1 2 2"));
		Finding finding = theOnly(IssueCodes.FILM_SHORT);
		assertEquals(new Place(row.getStack(), PlanPackage.Literals.THICKNESS_ROW__VALUES, 3), finding.place());
		assertEquals(Severity.ERROR, finding.severity());
	}

	@Test
	void filmThatIsNotStockedComesWithTheNearest() {
		row.setStack(demo.thicknesses("2.5"));
		Finding finding = theOnly(IssueCodes.FILM_NOT_STOCKED);
		assertEquals(List.of("2 thou"), finding.data());
	}

	@Test
	void anEmptyArcIsFoundAtItsEnd() {
		Round round = demo.felt(row, ". 0.5 . .");
		demo.shim(round, "0.5", "4", "4");
		assertEquals(Place.of(round.getPieces().get(0), PlanPackage.Literals.PIECE__TO),
				theOnly(IssueCodes.ARC_EMPTY).place());
	}

	@Test
	void aStackThatIsOffComesWithABetterOne() {
		row.setEmpty(demo.thicknesses("4 4 4 4"));
		row.setStack(demo.thicknesses("2"));
		Finding finding = theOnly(IssueCodes.STACK_HEIGHT);
		assertEquals(List.of("2 2"), finding.data());
	}

	@Test
	void aSuspectUnitComesWithTheOneThatWasMeant() {
		assertEquals(List.of("13 mm"), suspectHole("13 thou"));
		assertEquals(List.of("500 thou"), suspectHole("500 mm"));
		assertEquals(List.of("5000 um"), suspectHole("5000 mm"));
		assertEquals(List.of(), suspectHole("0.001 mm"));
	}

	/** A place of 200 um could be 200 thou or 200 mm. */
	@Test
	void ofTwoUnitsThatMakeSenseNoneIsProposed() {
		key.setPosition(Measure.valueOf("200 um"));
		assertEquals(List.of(), ModelChecks.check(demo.system).get(0).data());
	}

	private List<String> suspectHole(String diameter) {
		ToneHole hole = KeySystemFactory.eINSTANCE.createToneHole();
		hole.setDiameter(Measure.valueOf(diameter));
		key.setHole(hole);
		List<Finding> findings = ModelChecks.check(demo.system);
		assertEquals(List.of(IssueCodes.UNIT_SUSPECT), findings.stream().map(Finding::code).toList());
		return findings.get(0).data();
	}

	@Test
	void theDocumentsUnitHolds() {
		Document document = PlanFactory.eINSTANCE.createDocument();
		document.setUnit(LengthUnit.MILLIMETRE);
		document.getPlans().add(demo.plan);
		row.setStack(demo.thicknesses("0.0127"));
		assertEquals(List.of(), ModelChecks.check(document));
		row.getStack().getValues().set(0, new BigDecimal("2"));
		assertEquals(List.of(IssueCodes.UNIT_SUSPECT, IssueCodes.FILM_NOT_STOCKED),
				ModelChecks.check(document).stream().map(Finding::code).sorted(Comparator.reverseOrder())
						.toList());
	}

	@Test
	void everyMessageSaysWhatWhyAndTheCure() {
		row.setStack(demo.thicknesses("2.5"));
		Advice advice = theOnly(IssueCodes.FILM_NOT_STOCKED).advice();
		assertEquals(advice.what() + ": " + advice.why() + ". " + advice.cure() + ".", advice.inOneLine());
	}

	@Test
	void checkingStopsWhenItIsCancelled() {
		row.setStack(demo.thicknesses("2.5"));
		assertEquals(List.of(), ModelChecks.check(demo.stock, () -> true));
		assertEquals(1, ModelChecks.check(demo.plan, () -> true).size());
	}

	/** A half-typed file gives elements of which nothing is known. */
	@Test
	void elementsWithNothingInThemAreBorne() {
		for (EPackage model : List.of(KeySystemPackage.eINSTANCE, StockPackage.eINSTANCE, PlanPackage.eINSTANCE)) {
			for (EClassifier classifier : model.getEClassifiers()) {
				if (classifier instanceof EClass type && !type.isAbstract()) {
					assertTrue(ModelChecks.check(EcoreUtil.create(type)).size() <= 1, type.getName());
				}
			}
		}
	}
}
