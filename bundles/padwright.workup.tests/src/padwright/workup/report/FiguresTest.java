package padwright.workup.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.util.Locale;

import org.junit.jupiter.api.Test;

import padwright.engine.length.Length;
import padwright.workup.words.Texts;

class FiguresTest {

	@Test
	void decimalsAreWrittenAsTheLanguageWritesThem() {
		assertEquals("+0.25 1.5 12.3 90.00", Texts.in(Locale.ENGLISH, FiguresTest::figures));
		assertEquals("+0,25 1,5 12,3 90,00", Texts.in(Locale.GERMAN, FiguresTest::figures));
	}

	private static String figures() {
		return Figures.signedThou(Length.thou("0.25"), 2) + " " + Figures.thou(Length.thou("1.5")) + " "
				+ Figures.number(12.34, 1) + " " + Figures.money(BigDecimal.valueOf(90));
	}
}
