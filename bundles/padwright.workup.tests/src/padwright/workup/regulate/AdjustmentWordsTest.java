package padwright.workup.regulate;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import padwright.engine.coupling.FilmChange;
import padwright.engine.coupling.ScrewTurn;
import padwright.engine.length.Length;

class AdjustmentWordsTest {

	@ParameterizedTest
	@CsvSource({ "0,leave as it is", "-0.0001,< 1° out", "0.0127,18° in (0.6 clock hours)", "-0.020833,30° out (1 clock hour)",
			"0.125,180° in (6 clock hours)", "0.25,1 turn in", "0.254,1 turn and 6° in", "-0.5,2 turns out",
			"-0.40625,1 turn and 225° out" })
	void aScrewOfAQuarterMillimetreIsTurned(String millimetres, String words) {
		assertEquals(words,
				AdjustmentWords.of(new ScrewTurn(Length.millimetres(millimetres), Length.millimetres("0.25"))));
	}

	@Test
	void filmIsAddedTakenAwayOrLeft() {
		List<Length> films = List.of(Length.thou("2"), Length.thou("0.5"));
		assertEquals("add 2 + 0.5 thou of film", AdjustmentWords.of(new FilmChange(Length.thou("2.5"), films)));
		assertEquals("take away 2 + 0.5 thou of film", AdjustmentWords.of(new FilmChange(Length.thou("-2.6"), films)));
		assertEquals("no film comes nearer", AdjustmentWords.of(new FilmChange(Length.thou("0.1"), List.of())));
		assertEquals("leave as it is", AdjustmentWords.of(new FilmChange(Length.ZERO, List.of())));
	}
}
