package padwright.workup.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import java.util.function.Supplier;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

import padwright.engine.clock.Arc;
import padwright.engine.clock.ClockHour;
import padwright.engine.film.PartialShim;
import padwright.engine.length.Length;
import padwright.engine.length.LengthUnit;

class LengthWordsTest {

	private static final Length RECKONED = Length.ofNanometres(391_471);

	private static <T> T german(LengthUnit unit, Supplier<T> work) {
		return Spoken.in(Locale.GERMAN, () -> Spoken.in(unit, work));
	}

	@Test
	void theSameLengthInEachUnitAndLanguage() {
		assertEquals("1.25 thou", Spoken.in(Locale.ENGLISH, () -> LengthWords.withUnit(Length.thou("1.25"))));
		assertEquals("1,25 thou", german(LengthUnit.THOU, () -> LengthWords.withUnit(Length.thou("1.25"))));
		assertEquals("0,0318 mm", german(LengthUnit.MILLIMETRE, () -> LengthWords.withUnit(Length.thou("1.25"))));
		assertEquals("31,8 \u00B5m", german(LengthUnit.MICROMETRE, () -> LengthWords.withUnit(Length.thou("1.25"))));
		assertEquals("\u22120,5", german(LengthUnit.THOU, () -> LengthWords.figure(Length.thou("-0.5"))));
		assertEquals("17,5", german(LengthUnit.THOU, () -> LengthWords.millimetres(Length.millimetres("17.5"), 2)));
	}

	/** A leaf keeps the figure it is sold by; what was reckoned shows no more than feelers tell. */
	@Test
	void whatWasReckonedIsShownNoFinerThanItIsKnown() {
		assertEquals("0.125 thou", LengthWords.exact(Length.thou("0.125")));
		assertEquals("15.4 thou", LengthWords.roughWithUnit(RECKONED));
		assertEquals("0.391 mm", Spoken.in(LengthUnit.MILLIMETRE, () -> LengthWords.roughWithUnit(RECKONED)));
		assertEquals("391 \u00B5m", Spoken.in(LengthUnit.MICROMETRE, () -> LengthWords.roughWithUnit(RECKONED)));
	}

	@Test
	void piecesHoursAndDaysAreInTheLanguageToo() {
		PartialShim piece = new PartialShim(Arc.between(ClockHour.ofHour(1).plusHalfHours(1), ClockHour.ofHour(4)), Length.thou("0.5"));
		assertEquals("0.5 from 1.5 to 4", Spoken.in(Locale.ENGLISH, () -> PieceWords.of(piece)));
		assertEquals("0,5 von 1,5 bis 4", german(LengthUnit.THOU, () -> PieceWords.of(piece)));
		LocalDate day = LocalDate.of(2026, 3, 9);
		assertEquals("2026-03-09", Spoken.in(Locale.ENGLISH, () -> Days.of(day)));
		assertEquals("09.03.2026", german(LengthUnit.THOU, () -> Days.of(day)));
	}

	@ParameterizedTest
	@EnumSource(LengthUnit.class)
	void whatIsShownOfASumAddsUpAndIsNearestToIt(LengthUnit unit) {
		SplittableRandom random = new SplittableRandom(11);
		Spoken.in(unit, () -> {
			for (int round = 0; round < 2_000; round++) {
				List<Length> exact = Stream.generate(() -> new Length(random.nextLong(-3_000_000, 3_000_000))).limit(5).toList();
				RoughSum shown = RoughSum.of(exact);
				assertEquals(shown.sum(), shown.terms().stream().reduce(Length.ZERO, Length::plus));
				assertEquals(LengthWords.roughly(exact.stream().reduce(Length.ZERO, Length::plus)), shown.sum());
				for (int term = 0; term < exact.size(); term++) {
					Length off = shown.terms().get(term).minus(exact.get(term)).abs();
					assertTrue(!off.isLongerThan(LengthWords.roughStep()), off.toString());
				}
			}
			return null;
		});
	}
}
