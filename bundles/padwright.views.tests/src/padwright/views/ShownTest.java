package padwright.views;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

import padwright.drawing.scene.Scene;
import padwright.engine.clock.ClockHour;
import padwright.engine.length.Length;
import padwright.engine.length.LengthUnit;
import padwright.views.clock.ClockSession;
import padwright.views.clock.ClockState;
import padwright.views.rows.KeyColumn;
import padwright.views.rows.KeyRows;
import padwright.views.rows.NotedWork;
import padwright.views.rows.RowEdit;
import padwright.views.scenes.Targets;
import padwright.workup.words.GapWords;
import padwright.workup.words.LengthWords;

/** Units and clocks as the user wants them. One inch is exactly 25.4 mm (NIST SP 811, B.8). */
class ShownTest {

	@AfterEach
	void asAtFirst() {
		Shown.setUnit(LengthUnit.THOU);
		Shown.setTop(ClockHour.ofHour(12));
	}

	@ParameterizedTest
	@CsvSource({"THOU, 1.5 thou", "MILLIMETRE, 0.0381 mm", "MICROMETRE, 38.1 \u00B5m"})
	void aThouAndAHalfInEachUnit(LengthUnit unit, String shown) {
		Shown.setUnit(unit);
		assertEquals(shown, LengthWords.withUnit(Length.thou("1.5")));
	}

	@ParameterizedTest
	@EnumSource
	void whatIsShownIsReadAsTheSameLength(LengthUnit unit) {
		Shown.setUnit(unit);
		for (int halves = 0; halves < 200; halves++) {
			Length length = new Length(halves * Length.thou("0.5").nanometres());
			assertEquals(Optional.of(length), Figures.read(Figures.shown(length)));
		}
		assertEquals(Optional.empty(), Figures.read("-1"));
		assertEquals(Optional.empty(), Figures.read("one"));
	}

	@ParameterizedTest
	@CsvSource({"THOU, about 1.3 thou", "MILLIMETRE, about 0.033 mm", "MICROMETRE, about 33 \u00B5m"})
	void gapsAreToldInEachUnitNoFinerThanTheyAreKnown(LengthUnit unit, String shown) {
		Shown.setUnit(unit);
		assertEquals(shown, GapWords.about(Length.thou("1.3")));
	}

	@Test
	void piecesAreToldInTheUnitShown() {
		Shown.setUnit(LengthUnit.MILLIMETRE);
		Bench bench = new Bench("key A felt . 0.5 . 1 full +0.5 out 1 from 8 to 9 shim 0.5 from 2 to 4");
		assertEquals("full shims +0.0127, out 0.0254 from 8 to 9, 0.0127 from 2 to 4",
				NotedWork.of(bench.row("A").lastRound().orElseThrow()));
	}

	@Test
	void decimalsAreWrittenAsTheLanguageWritesThemAndReadEitherWay() {
		Locale before = Locale.getDefault(Locale.Category.DISPLAY);
		try {
			Locale.setDefault(Locale.Category.DISPLAY, Locale.GERMAN);
			assertEquals("0,5", Figures.shown(Length.thou("0.5")));
			Locale.setDefault(Locale.Category.DISPLAY, Locale.ENGLISH);
			assertEquals("0.5", Figures.shown(Length.thou("0.5")));
		} finally {
			Locale.setDefault(Locale.Category.DISPLAY, before);
		}
		assertEquals(Figures.read("0.5"), Figures.read("0,5"));
	}

	@Test
	void headingsSayTheUnit() {
		assertEquals("Readings thou", KeyColumn.READINGS.heading());
		assertEquals("Cup mm", KeyColumn.CUP.heading());
		assertEquals("State", KeyColumn.STATE.heading());
	}

	@Test
	void cellsAreTypedInTheUnitShownAndWrittenInThatOfThePlan() {
		Shown.setUnit(LengthUnit.MILLIMETRE);
		Bench bench = new Bench("key A empty 15 15 15 15 felt . 0.5 . 1");
		assertEquals(". 0.0127 . 0.0254", KeyColumn.READINGS.text(KeyRows.of(bench.plan(), bench.findings()).rows().get(0)));
		bench.apply(RowEdit.of(KeyRows.of(bench.plan(), bench.findings()).rows().get(0), KeyColumn.SHIMS, "0.1905 0,0508"));
		assertTrue(bench.rows().contains("stack 7.5 2"), bench.rows());
	}

	@Test
	void theClockTurnsWithItsTop() {
		Bench bench = new Bench("key A empty 15 15 15 15 felt . 0.5 . 1");
		ClockSession session = new ClockSession(edits -> true);
		session.show(ClockState.of(bench.row("A")));
		assertEquals("reading-12", highest(session));
		Shown.setTop(ClockHour.ofHour(9));
		assertEquals("reading-9", highest(session));
	}

	private static String highest(ClockSession session) {
		Scene scene = session.draw(Palette.light(), 1);
		Set<String> hours = Set.of("reading-12", "reading-3", "reading-6", "reading-9");
		return Targets.of(scene).all().stream().filter(target -> hours.contains(target.id()))
				.collect(Collectors.minBy((one, other) -> Double.compare(one.bounds().top(), other.bounds().top())))
				.orElseThrow().id();
	}
}
