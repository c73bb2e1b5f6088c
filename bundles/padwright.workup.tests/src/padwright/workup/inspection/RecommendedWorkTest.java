package padwright.workup.inspection;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;

import org.junit.jupiter.api.Test;

import padwright.engine.clock.ClockHour;
import padwright.engine.length.Length;
import padwright.model.Measure;
import padwright.model.Range;
import padwright.model.keysystem.KeySystemFactory;
import padwright.model.plan.CorkState;
import padwright.model.plan.Inspection;
import padwright.model.plan.KeyService;
import padwright.model.plan.PlanFactory;
import padwright.model.plan.Tenon;
import padwright.model.plan.TenonFit;
import padwright.workup.DemoPlan;

class RecommendedWorkTest {

	private final DemoPlan demo = new DemoPlan();
	private final KeyService row = demo.row(demo.key("A"));

	private List<Recommendation> work() {
		return RecommendedWork.of(demo.service());
	}

	/** A wrap of half-thou film adds a thou to the diameter: 1.5 thou take two. */
	@Test
	void aLooseTenonIsWrapped() {
		inspection().getTenons().add(tenon(TenonFit.LOOSE, "1.5 thou"));
		assertEquals("Expand it on a mandrel, or lay film of 0.5 thou around it, 2 times", work().get(0).work().words());
		demo.plan.getInspection().getTenons().set(0, tenon(TenonFit.LOOSE, "1 thou"));
		assertEquals("Expand it on a mandrel, or lay film of 0.5 thou around it, once", work().get(0).work().words());
		demo.plan.getInspection().getTenons().set(0, tenon(TenonFit.SOUND, null));
		assertEquals(List.of(), work());
	}

	@Test
	void nothingTakesMetalOff() {
		Inspection seen = inspection();
		seen.getTenons().add(tenon(TenonFit.TIGHT, null));
		seen.setHeadCork(CorkState.DRY);
		seen.setPlay(Measure.valueOf("3 thou"));
		row.getNicks().add(ClockHour.ofHour(new BigDecimal("3")));
		row.setWarped(true);
		row.setPlay(Measure.valueOf("2 thou"));
		row.setEmpty(demo.thicknesses("18 14 12 14"));
		assertEquals(8, work().size(), work().toString());
		for (Recommendation each : work()) {
			assertFalse(each.work().words().matches("(?i).*(^|, |and )(file|sand|lap|cut|ream) .*"), each.work().words());
			assertFalse(each.reason().words().isBlank());
		}
	}

	@Test
	void aBedIsAskedForWhereCupsWereReadAndNeverAssumed() {
		assertEquals(List.of(), work());
		row.setEmpty(demo.thicknesses("15 15 15 15"));
		assertEquals(List.of("Plan"), work().stream().map(each -> each.where().words()).toList());
		demo.plan.setBed(Range.valueOf("13..16"));
		assertEquals(List.of(), work());
	}

	/** Two readings up, two down: a plane has no part in it. */
	@Test
	void anEmptyCupIsSplitIntoHeightTiltAndSaddle() {
		demo.plan.setBed(Range.valueOf("13..16"));
		row.setEmpty(demo.thicknesses("16 14 16 14"));
		var split = EmptyCup.split(demo.service().jobs().get(0)).orElseThrow();
		assertEquals(Length.thou("15"), split.height());
		assertEquals(Length.ZERO, split.tilt().fromTightToOpen());
		assertEquals(Length.thou("2"), split.saddle().fromTightToOpen());
		assertTrue(work().get(0).found().words().contains("saddle of 2 thou, open at 12 and 6"), work().get(0).found().words());
		row.setEmpty(demo.thicknesses("16 15 14 15"));
		assertTrue(work().get(0).found().words().contains("leans by 2 thou, open toward 12"), work().get(0).found().words());
		row.setEmpty(demo.thicknesses("15 15 15 15"));
		assertEquals(List.of(), work());
		row.setEmpty(demo.thicknesses("15 15"));
		assertTrue(EmptyCup.split(demo.service().jobs().get(0)).isEmpty());
	}

	@Test
	void aSpringIsJudgedByTheOthers() {
		row.setSpring(new BigDecimal("46"));
		for (String name : new String[] { "B", "C" }) {
			assertEquals(List.of(), work());
			demo.row(demo.key(name)).setSpring(new BigDecimal("30"));
		}
		assertEquals(List.of("Bend the spring weaker"), work().stream().map(each -> each.work().words()).toList());
		row.setSpring(new BigDecimal("45"));
		assertEquals(List.of(), work());
		row.setSpring(new BigDecimal("19.9"));
		assertEquals(List.of("Bend the spring stronger"), work().stream().map(each -> each.work().words()).toList());
		row.setSpring(new BigDecimal("20"));
		assertEquals(List.of(), work());
	}

	private Inspection inspection() {
		demo.plan.setInspection(PlanFactory.eINSTANCE.createInspection());
		return demo.plan.getInspection();
	}

	private static Tenon tenon(TenonFit fit, String gap) {
		Tenon tenon = PlanFactory.eINSTANCE.createTenon();
		tenon.setJoint(KeySystemFactory.eINSTANCE.createJoint());
		tenon.getJoint().setName("head");
		tenon.setFit(fit);
		tenon.setGap(gap == null ? null : Measure.valueOf(gap));
		return tenon;
	}
}
