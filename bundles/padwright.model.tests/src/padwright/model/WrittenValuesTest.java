package padwright.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import padwright.engine.length.LengthUnit;

class WrittenValuesTest {

	@ParameterizedTest
	@ValueSource(strings = { "14.3 mm", "0.50", "7 thou", "12.7 um", "0" })
	void measuresAreWrittenAsTheyWereRead(String text) {
		assertEquals(text, Measure.valueOf(text).toString());
	}

	@Test
	void measuresBearAnyBlanksBeforeTheUnit() {
		assertEquals(Measure.valueOf("14.3 mm"), Measure.valueOf(" 14.3mm "));
		assertEquals(LengthUnit.MILLIMETRE, Measure.valueOf("14.3   mm").unit());
	}

	@ParameterizedTest
	@ValueSource(strings = { "", "mm", "1 inch", "-1 mm", "1,5 mm", "1. mm", ".5", "1 mm 2", "1e3" })
	void otherTextIsNoMeasure(String text) {
		assertThrows(IllegalArgumentException.class, () -> Measure.valueOf(text));
	}

	@ParameterizedTest
	@ValueSource(strings = { "13..16", "0.5..0.50", "13", "104..106.5", "16..13" })
	void rangesAreWrittenAsTheyWereRead(String text) {
		assertEquals(text, Range.valueOf(text).toString());
	}

	@Test
	void aRangeIsEmptyIfItRunsBackwards() {
		assertTrue(Range.valueOf("16..13").isEmpty());
		assertFalse(Range.valueOf("13..13.0").isEmpty());
		assertFalse(Range.valueOf("13").isEmpty());
	}

	@ParameterizedTest
	@ValueSource(strings = { "", "..", "1..", "..2", "a..b", "1..2..3" })
	void otherTextIsNoRange(String text) {
		assertThrows(IllegalArgumentException.class, () -> Range.valueOf(text));
	}

	@ParameterizedTest
	@ValueSource(strings = { ".", "-", "0.5", "1" })
	void readingsAreWrittenAsTheyWereRead(String text) {
		assertEquals(text, FeelerReading.valueOf(text).toString());
	}

	@ParameterizedTest
	@ValueSource(strings = { "+0.5 thou", "-1", "+0.50", "-0.0127 mm" })
	void changesAreWrittenAsTheyWereRead(String text) {
		assertEquals(text, SignedMeasure.valueOf(text).toString());
	}

	@Test
	void aChangeHasASign() {
		assertEquals(new SignedMeasure(true, Measure.valueOf("0.5 thou")), SignedMeasure.valueOf("- 0.5thou"));
		assertThrows(IllegalArgumentException.class, () -> SignedMeasure.valueOf("0.5 thou"));
		assertThrows(IllegalArgumentException.class, () -> SignedMeasure.valueOf("+"));
	}

	@Test
	void aDotSaysThatTheFinestFeelerDrags() {
		assertEquals(FeelerReading.DRAGS, FeelerReading.valueOf("."));
		assertTrue(FeelerReading.DRAGS.free().isEmpty());
		assertThrows(IllegalArgumentException.class, () -> FeelerReading.valueOf("x"));
	}
}
