package padwright.workup.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;

import org.eclipse.emf.ecore.EClass;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

import padwright.model.plan.JobEntry;
import padwright.model.plan.Plan;
import padwright.model.plan.PlanFactory;
import padwright.model.plan.PlanPackage;
import padwright.model.plan.SpringMetal;
import padwright.model.plan.SpringNote;
import padwright.model.plan.TenonNote;
import padwright.model.plan.TenonWork;
import padwright.workup.service.ServicePlan;
import padwright.workup.words.Spoken;

class JobWordsTest {

	private static final ServicePlan PLAN = new ServicePlan(plan());

	private static Plan plan() {
		Plan plan = PlanFactory.eINSTANCE.createPlan();
		plan.setName("P");
		return plan;
	}

	static List<EClass> kinds() {
		return PlanPackage.eINSTANCE.getEClassifiers().stream().filter(EClass.class::isInstance).map(EClass.class::cast)
				.filter(kind -> PlanPackage.eINSTANCE.getJobEntry().isSuperTypeOf(kind) && !kind.isAbstract()).toList();
	}

	/** Half typed too. */
	@ParameterizedTest
	@MethodSource("kinds")
	void everyLineOfADiaryHasWordsInBothLanguages(EClass kind) {
		JobEntry entry = (JobEntry) PlanFactory.eINSTANCE.create(kind);
		String english = JobWords.of(PLAN, entry);
		assertFalse(english.isBlank());
		assertNotEquals(english, Spoken.in(Locale.GERMAN, () -> JobWords.of(PLAN, entry)));
	}

	@Test
	void factsStandBehindTheThingInTheOrderOfTheGrammar() {
		SpringNote spring = PlanFactory.eINSTANCE.createSpringNote();
		spring.setMetal(SpringMetal.STEEL);
		spring.setReplaced(true);
		spring.setLeft(new BigDecimal("34.5"));
		spring.setDate(LocalDate.of(2026, 3, 2));
		spring.setHand("L");
		assertEquals("Spring: steel, replaced, left 34.5 grams, 2026-03-02, by L", JobWords.dated(PLAN, spring));
		assertEquals("Feder: Stahl, ersetzt, geblieben 34,5 Gramm, 02.03.2026, von L",
				Spoken.in(Locale.GERMAN, () -> JobWords.dated(PLAN, spring)));
	}

	@Test
	void aTenonIsExpandedOnAMandrel() {
		TenonNote tenon = PlanFactory.eINSTANCE.createTenonNote();
		tenon.setWork(TenonWork.EXPANDED);
		assertEquals("Zapfen: auf dem Dorn geweitet", Spoken.in(Locale.GERMAN, () -> JobWords.of(PLAN, tenon)));
	}
}
