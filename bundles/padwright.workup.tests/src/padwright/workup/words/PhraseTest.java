package padwright.workup.words;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;

import org.junit.jupiter.api.Test;

import padwright.engine.clock.ClockHour;
import padwright.engine.length.Length;
import padwright.engine.length.LengthUnit;

/** What was put together in one language and unit is told in those of whoever reads it. */
class PhraseTest {

	@Test
	void whatIsInAPhraseFollowsTheLanguageAndTheUnit() {
		Phrase tolerance = Phrase.of("height.tolerance", new Rough(Length.thou("1.3")), new RoughFigure(Length.thou("1")));
		assertEquals("\u00b1 1.3 thou at worst, \u00b1 1 likely", tolerance.words());
		assertEquals("\u00b1 0,033 mm h\u00f6chstens, meist \u00b1 0,025",
				Spoken.in(Locale.GERMAN, () -> Spoken.in(LengthUnit.MILLIMETRE, tolerance::words)));
	}

	@Test
	void soDoSeveralInOnePlace() {
		Listed leaves = Listed.of(List.of(Length.thou("0.5"), Length.thou("1")));
		assertEquals("0.5 thou, 1 thou", leaves.toString());
		assertEquals("0,0127 mm, 0,0254 mm",
				Spoken.in(Locale.GERMAN, () -> Spoken.in(LengthUnit.MILLIMETRE, leaves::toString)));
		assertEquals("1,5, 3", Spoken.in(Locale.GERMAN,
				Listed.of(List.of(new ClockHour(3), ClockHour.ofHour(3)))::toString));
		Listed closes = new Listed(List.of(Phrase.of("mechanism.closes", "F", "Fs"), Phrase.plain("E")), "; ");
		assertEquals("F closes Fs; E", closes.toString());
		assertEquals("F schlie\u00dft Fs; E", Spoken.in(Locale.GERMAN, closes::toString));
	}

	@Test
	void soDoesMoney() {
		assertEquals("90.00", new Amount(BigDecimal.valueOf(90)).toString());
		assertEquals("90,00", Spoken.in(Locale.GERMAN, new Amount(BigDecimal.valueOf(90))::toString));
	}
}
