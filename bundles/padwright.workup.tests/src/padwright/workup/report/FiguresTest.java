package padwright.workup.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;

import org.junit.jupiter.api.Test;

import padwright.engine.length.Length;
import padwright.workup.words.LengthWords;
import padwright.workup.words.Spoken;

class FiguresTest {

	@Test
	void decimalsAreWrittenAsTheLanguageWritesThem() {
		assertEquals("+0.25 1.5 12.3 90.00", Spoken.in(Locale.ENGLISH, FiguresTest::figures));
		assertEquals("+0,25 1,5 12,3 90,00", Spoken.in(Locale.GERMAN, FiguresTest::figures));
	}

	@Test
	void partsInWholePercentSumToAHundred() {
		assertEquals(List.of("34 %", "33 %", "33 %"), Figures.percents(List.of(1.0, 1.0, 1.0)));
		assertEquals(List.of("98 %", "1 %", "1 %", "0 %", "0 %"), Figures.percents(List.of(98.0, 0.5, 0.5, 0.5, 0.5)));
		assertEquals(List.of("100 %", "0 %"), Figures.percents(List.of(5.0, 0.0)));
	}

	private static String figures() {
		return LengthWords.signed(Length.thou("0.25")) + " " + LengthWords.figure(Length.thou("1.5")) + " "
				+ Figures.number(12.34, 1) + " " + Figures.money(BigDecimal.valueOf(90));
	}
}
