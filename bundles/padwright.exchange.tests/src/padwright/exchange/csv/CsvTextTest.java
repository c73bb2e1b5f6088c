package padwright.exchange.csv;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import padwright.exchange.tree.ExchangeException;


class CsvTextTest {

	/** RFC 4180, section 2, the examples of items 1, 2, 3, 5, 6 and 7. */
	@Test
	void theExamplesOfRfc4180() throws ExchangeException {
		List<List<String>> two = List.of(List.of("aaa", "bbb", "ccc"), List.of("zzz", "yyy", "xxx"));
		assertEquals(two, cells("aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n"));
		assertEquals(two, cells("aaa,bbb,ccc\r\nzzz,yyy,xxx"));
		assertEquals(List.of(List.of("field_name", "field_name", "field_name"), two.get(0), two.get(1)),
				cells("field_name,field_name,field_name\r\naaa,bbb,ccc\r\nzzz,yyy,xxx\r\n"));
		assertEquals(two, cells("\"aaa\",\"bbb\",\"ccc\"\r\nzzz,yyy,xxx"));
		assertEquals(List.of(List.of("aaa", "b\r\nbb", "ccc"), two.get(1)),
				cells("\"aaa\",\"b\r\nbb\",\"ccc\"\r\nzzz,yyy,xxx"));
		assertEquals(List.of(List.of("aaa", "b\"bb", "ccc")), cells("\"aaa\",\"b\"\"bb\",\"ccc\""));
	}

	/** RFC 4180, section 2, item 4: spaces are part of a field. */
	@Test
	void blanksAndEmptyCellsStay() throws ExchangeException {
		assertEquals(List.of(List.of(" a ", "", "b", "")), cells(" a ,,b,"));
		assertEquals(List.of(List.of("", "b")), cells(",b"));
		assertEquals(List.of(List.of("a", "")), cells("a,\n"));
	}

	@ParameterizedTest
	@ValueSource(strings = { "a,b\nc,d", "a,b\rc,d\r", "\uFEFFa,b\r\n\r\nc,d\r\n\r\n", "\n\na,b\n\nc,d" })
	void everyLineEndIsRead(String text) throws ExchangeException {
		assertEquals(List.of(List.of("a", "b"), List.of("c", "d")), cells(text));
	}

	@Test
	void rowsKnowTheirLines() throws ExchangeException {
		assertEquals(List.of(1, 4, 6), CsvText.read("a,\"b\nc\r\nd\"\ne\r\n\r\nf", ',').stream().map(CsvRow::line).toList());
	}

	@Test
	void quotesOutOfPlaceAreRefusedAtTheirLine() {
		assertRefused(2, "never closed", "a\n\"b\nc");
		assertRefused(2, "behind a closing quote", "a\n\"b\"c,d");
		assertRefused(3, "inside a cell", "a\n\nb\"c\",d");
	}

	/** Derived here: what is written is read again, whatever the cells hold. */
	@Test
	void whatIsWrittenIsReadAgain() throws ExchangeException {
		SplittableRandom random = new SplittableRandom(4180);
		for (int run = 0; run < 500; run++) {
			List<List<String>> rows = new ArrayList<>();
			for (int row = 0; row < 4; row++) {
				rows.add(List.of("x" + cell(random), cell(random), cell(random)));
			}
			assertEquals(rows, cells(CsvText.write(rows)));
		}
	}

	@Test
	void formulasAreKeptFromSpreadsheets() {
		for (String cell : List.of("=1+1", "+cmd", "-cmd", "@sum", "'quoted", "\t=1", "-", "-1-1")) {
			assertEquals("'" + cell, FormulaGuard.guarded(cell));
			assertEquals(cell, FormulaGuard.bare(FormulaGuard.guarded(cell)));
		}
		for (String cell : List.of("", "-2.5", "12", "F♯", "a=b")) {
			assertEquals(cell, FormulaGuard.guarded(cell));
			assertEquals(cell, FormulaGuard.bare(cell));
		}
	}

	@Test
	void theSeparatorIsTheMostFrequent() {
		assertEquals(';', Separator.of("\nkey;12;3\n1,5;2,5;3\n"));
		assertEquals(',', Separator.of("key,12,3"));
		assertEquals('\t', Separator.of("key\t12\t\"a;b;c\""));
		assertEquals(',', Separator.of("key"));
	}

	private static String cell(SplittableRandom random) {
		StringBuilder cell = new StringBuilder();
		for (int length = random.nextInt(5); length > 0; length--) {
			cell.append(" ,;\"\r\n\ta♯=".charAt(random.nextInt(10)));
		}
		return cell.toString();
	}

	private static List<List<String>> cells(String text) throws ExchangeException {
		return CsvText.read(text, ',').stream().map(CsvRow::cells).toList();
	}

	private static void assertRefused(int line, String why, String text) {
		ExchangeException refused = assertThrows(ExchangeException.class, () -> CsvText.read(text, ','));
		assertEquals(line, refused.line().orElseThrow());
		assertEquals(true, refused.getMessage().contains(why), refused.getMessage());
	}
}
