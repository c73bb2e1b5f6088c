package padwright.exchange.readings;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

import padwright.engine.length.Length;
import padwright.engine.length.LengthUnit;

/** One inch is exactly 25.4 mm (NIST SP 811, B.8), so a thou is 25 400 nm. */
class IndicatorLineTest {

	@ParameterizedTest
	@CsvSource({"12.7, THOU, 322580", "'0,0135', MILLIMETRE, 13500", "+0.34 mm, THOU, 340000", "0.34mm, MICROMETRE, 340000",
			"  1.5 , THOU, 38100", "0.0005 in, MILLIMETRE, 12700", "'0.0005\"', THOU, 12700", "-0.02 mm, THOU, -20000",
			"+000.0127, MILLIMETRE, 12700", ".5, THOU, 12700", "0.00000049, MILLIMETRE, 0", "12.7 \u00B5m, THOU, 12700"})
	void aLineIsALength(String line, LengthUnit usual, long nanometres) {
		assertEquals(Optional.of(new Length(nanometres)), IndicatorLine.of(line, usual));
	}

	@ParameterizedTest
	@ValueSource(strings = {"", "ERR", "12.7 V", "1.2.3", "0.5 0.7", "--1", "OL", "99999999999999999999 mm"})
	void whatIsNoneIsNone(String line) {
		assertEquals(Optional.empty(), IndicatorLine.of(line, LengthUnit.THOU));
	}

	@Test
	void anEndlessLineIsNone() {
		assertEquals(Optional.empty(), IndicatorLine.of("1".repeat(10_000), LengthUnit.THOU));
	}
}
