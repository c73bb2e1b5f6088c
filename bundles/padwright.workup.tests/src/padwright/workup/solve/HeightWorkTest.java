package padwright.workup.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;

import org.junit.jupiter.api.Test;

import padwright.engine.length.Length;
import padwright.model.Measure;
import padwright.model.keysystem.Key;
import padwright.model.keysystem.KeySystemFactory;
import padwright.model.keysystem.PadCup;
import padwright.model.plan.KeyService;
import padwright.workup.DemoPlan;
import padwright.workup.checks.Severity;

class HeightWorkTest {

	private static final Length NANOMETRE = Length.ofNanometres(1);

	private final DemoPlan demo = new DemoPlan();
	private final Key key = demo.key("A");
	private final KeyService row = demo.row(key);

	private Optional<HeightWork> work() {
		return HeightWork.of(demo.service().jobs().get(0));
	}

	private void depth(String depth) {
		PadCup cup = KeySystemFactory.eINSTANCE.createPadCup();
		cup.setDiameter(Measure.valueOf("17 mm"));
		cup.setDepth(Measure.valueOf(depth));
		key.setCup(cup);
	}

	private void measured() {
		row.setEmpty(demo.thicknesses("15 15 14 16"));
		depth("100 thou");
		demo.pad.setThickness(Measure.valueOf("90 thou"));
		demo.pad.setSinks(Measure.valueOf("2 thou"));
		demo.backing(null, "20");
	}

	@Test
	void withoutAnEmptyGapThereIsNone() {
		depth("100 thou");
		assertEquals(Optional.empty(), work());
	}

	@Test
	void whereAllIsMeasuredTheEquationHolds() {
		measured();
		assertEquals(Length.thou("7"), work().orElseThrow().target());
	}

	@Test
	void whatIsNotThereTakesNoRoom() {
		measured();
		demo.plan.getFitting().setBacking(null);
		assertEquals(Length.thou("27"), work().orElseThrow().target());
		demo.pad.setSinks(null);
		assertEquals(Length.thou("25"), work().orElseThrow().target());
	}

	@Test
	void withoutDepthOrPadTheMeanGapHolds() {
		measured();
		demo.pad.setThickness(null);
		assertEquals(Length.thou("15"), work().orElseThrow().target());
		measured();
		key.setCup(null);
		assertEquals(Length.thou("15"), work().orElseThrow().target());
	}

	@Test
	void aDepthOrThicknessOfNothingIsNotMeasured() {
		measured();
		depth("0 thou");
		assertEquals(Length.thou("15"), work().orElseThrow().target());
		depth("100 thou");
		demo.pad.setThickness(Measure.valueOf("0 thou"));
		assertEquals(Length.thou("15"), work().orElseThrow().target());
	}

	@Test
	void theMeanIsTakenToTheNanometre() {
		row.setEmpty(demo.thicknesses("15 15 15.005"));
		assertEquals(Length.ofNanometres((3 * 381_000 + 127) / 3), work().orElseThrow().target());
	}

	@Test
	void severityChangesAtTheNanometre() {
		measured();
		demo.pad.setTolerance(Measure.valueOf("1 thou"));
		demo.plan.getFitting().getBacking().setTolerance(Measure.valueOf("0.3 thou"));
		Length target = Length.thou("7");
		for (int sign : new int[] { -1, 1 }) {
			Length tolerated = target.plus(Length.thou("0.5").times(sign));
			Length articles = target.plus(Length.thou("1.8").times(sign));
			assertFalse(isOff(tolerated));
			assertTrue(isOff(tolerated.plus(NANOMETRE.times(sign))));
			assertEquals(Severity.WARNING, severity(articles));
			assertEquals(Severity.ERROR, severity(articles.plus(NANOMETRE.times(sign))));
		}
	}

	private boolean isOff(Length stack) {
		return work().orElseThrow().isOff(List.of(stack));
	}

	private Severity severity(Length stack) {
		return work().orElseThrow().severity(List.of(stack));
	}

	@Test
	void theBestStackIsOfThePlansFilm() {
		measured();
		assertEquals(List.of(Length.thou("2"), Length.thou("2"), Length.thou("2"), Length.thou("1")),
				work().orElseThrow().solution().orElseThrow().pieces());
		demo.plan.getFitting().setFilms(null);
		assertEquals(List.of(), work().orElseThrow().solution().orElseThrow().pieces());
	}

	@Test
	void aHeightBeyondAnyInstrumentHasNoSolution() {
		row.setEmpty(demo.thicknesses("15000000"));
		assertEquals(Optional.empty(), work().orElseThrow().solution());
	}
}
