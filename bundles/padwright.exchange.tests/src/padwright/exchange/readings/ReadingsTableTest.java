package padwright.exchange.readings;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

import padwright.engine.clock.ClockHour;
import padwright.engine.length.Length;
import padwright.engine.length.LengthUnit;
import padwright.exchange.tree.ExchangeException;

class ReadingsTableTest {

	/** Fifteen thou and a half thou more, at 12 and 3, however an indicator's program writes it. */
	@ParameterizedTest
	@ValueSource(strings = {
			"key;12;3\nF;0,381 mm;0,3937 mm\n",
			"Key,12 (mm),3 [mm]\nF,0.381,0.3937\n",
			"key,12 mm,3 mm\nF,\"0,381\",\"0,3937\"\n",
			"KEY\t12 h\t3 o'clock\nF\t15 thou\t15.5thou\n",
			"pad;12:00 (in);3:00 (in)\r\nF;+.015;,0155\r\n",
			"note;at 12 [\u00B5m];hour 3 [\u03BCm]\nF;381;393.7\n",
			"device A;serial 7\nno.;key;hour;gap (thou);time\n1;F;12;15;10:01\n2;F;3;15,5;10:02\n",
			"\"key\",\"position\",\"value\",\"unit\"\n\"F\",\"12\",\"15\",\"mil\"\n\"F\",\"3.0\",\"0.3937\",\"mm\"\n" })
	void everyWayOfWritingIsRead(String text) throws ExchangeException {
		assertEquals(gaps("15", "15.5"), only(ReadingsTable.read(text, Optional.empty())).gaps());
	}

	@Test
	void figuresWithoutAUnitTakeTheOneThatIsNamed() throws ExchangeException {
		assertEquals(gaps("15", "15.5"),
				only(ReadingsTable.read("key,12,3\nF,0.381,0.3937", Optional.of(LengthUnit.MILLIMETRE))).gaps());
		assertEquals(gaps("15", "15.5"),
				only(ReadingsTable.read("key,12,3 (mm)\nF,15,0.3937", Optional.of(LengthUnit.THOU))).gaps());
	}

	@Test
	void emptyCellsAreNotRead() throws ExchangeException {
		List<KeyReadings> readings = ReadingsTable.read("key;12 mm;3 mm\nF;0,381;\n\nF;;0,3937\nE;1;2", Optional.empty());
		assertEquals(gaps("15", "15.5"), readings.get(0).gaps());
		assertEquals(List.of("F", "E"), readings.stream().map(KeyReadings::key).toList());
		assertEquals(List.of(2, 5), readings.stream().map(KeyReadings::line).toList());
	}

	@ParameterizedTest
	@CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
			1 | names the columns | F;1;2
			1 | names the columns | key;comment\\nF;1
			0 | no reading        | key;12 mm\\n
			2 | no unit;          | key;12\\nF;1
			2 | has no unit       | key;12;3\\nF;1;2
			3 | no figure         | key;12 mm\\nF;1\\nE;1.000,5
			2 | no figure         | key;12 mm\\nF;1e999999999
			2 | below zero        | key;12 mm\\nF;-0,01
			2 | nanometres        | key;12 mm\\nF;0,0000001
			2 | no unit of length | key;12 mm\\nF;1 furlong
			2 | no unit of length | key;hour;gap;unit\\nF;12;1;furlong
			2 | no hour           | key;hour;gap mm\\nF;13;1
			3 | read twice        | key;hour;gap mm\\nF;12;1\\nF;12.0;1
			2 | names no key      | key;12 mm\\n ;1
			2 | want semicolons   | key,12 mm,3 mm\\nF,0,381,0,39
			2 | never closed      | key,12 mm\\n"F,1
			""")
	void whatCannotBeUnderstoodIsRefusedAtItsLine(int line, String why, String text) {
		ExchangeException refused = assertThrows(ExchangeException.class,
				() -> ReadingsTable.read(text.replace("\\n", "\n"), Optional.empty()));
		assertTrue(refused.getMessage().contains(why), refused.getMessage());
		assertEquals(line, refused.line().orElse(0), refused.getMessage());
	}

	private static KeyReadings only(List<KeyReadings> readings) {
		assertEquals(1, readings.size());
		return readings.get(0);
	}

	private static Map<ClockHour, Length> gaps(String atTwelve, String atThree) {
		Map<ClockHour, Length> gaps = new LinkedHashMap<>();
		gaps.put(ClockHour.ofHour(12), Length.thou(atTwelve));
		gaps.put(ClockHour.ofHour(3), Length.thou(atThree));
		return gaps;
	}
}
