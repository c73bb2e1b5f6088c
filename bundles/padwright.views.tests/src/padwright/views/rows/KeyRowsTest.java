package padwright.views.rows;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

import padwright.views.Bench;
import padwright.workup.service.KeyJob;

class KeyRowsTest {

	private static final String ROWS = "key B stack 7.5 5 felt . 1 . 1\nkey A empty 15 felt . 0.5 . .";

	private static KeyRows rows(Bench bench) {
		return KeyRows.of(bench.plan(), bench.findings());
	}

	private static List<String> names(KeyRows rows) {
		return rows.rows().stream().map(KeyRow::name).toList();
	}

	@Test
	void everyKeyHasARowThosePlannedFirst() {
		assertEquals(List.of("B", "A", "C"), names(rows(new Bench(ROWS))));
	}

	@Test
	void cellsSayWhatTheRowSays() {
		KeyRow row = rows(new Bench(ROWS)).rows().get(0);
		assertEquals("B♭", KeyColumn.KEY.text(row));
		assertEquals("16.5", KeyColumn.CUP.text(row));
		assertEquals(". 1 . 1", KeyColumn.READINGS.text(row));
		assertEquals("7.5 5", KeyColumn.SHIMS.text(row));
		assertEquals("12.5", KeyColumn.SUM.text(row));
		assertEquals("", KeyColumn.AFTER.text(row));
	}

	@ParameterizedTest
	@EnumSource
	void sortingKeepsAllRowsAndTurnsAround(KeyColumn column) {
		KeyRows all = new KeyRows(Bench.examples().stream()
				.flatMap(plan -> KeyRows.of(plan, List.of()).rows().stream()).toList());
		KeyRows up = all.sorted(column, false);
		KeyRows down = all.sorted(column, true);
		assertEquals(new HashSet<>(all.rows()), new HashSet<>(up.rows()));
		assertEquals(new HashSet<>(all.rows()), new HashSet<>(down.rows()));
		for (int index = 1; index < up.rows().size(); index++) {
			assertTrue(column.order().compare(up.rows().get(index - 1), up.rows().get(index)) <= 0);
			assertTrue(column.order().compare(down.rows().get(index - 1), down.rows().get(index)) >= 0);
		}
	}

	@Test
	void filtersTakeEveryWord() {
		KeyRows rows = rows(new Bench(ROWS));
		assertEquals(List.of("C"), names(rows.filtered("TRILL")));
		assertEquals(List.of("B"), names(rows.filtered("16.5 7.5")));
		assertEquals(List.of("B", "A", "C"), names(rows.filtered("  ")));
		assertEquals(List.of(), names(rows.filtered("trill 7.5")));
	}

	@Test
	void aSpreadsheetGetsOneLineForEachRow() {
		String[] lines = KeyRows.tabSeparated(rows(new Bench(ROWS)).rows()).split("\n");
		assertEquals(4, lines.length);
		assertTrue(Stream.of(lines).allMatch(line -> line.split("\t", -1).length == KeyColumn.values().length));
		assertTrue(lines[1].startsWith("B♭\t"));
	}

	private static String typed(String rows, String key, KeyColumn column, String text) {
		Bench bench = new Bench(rows);
		KeyRow row = rows(bench).rows().stream().filter(each -> each.name().equals(key)).findFirst().orElseThrow();
		bench.apply(RowEdit.of(row, column, text));
		return bench.rows();
	}

	@Test
	void whatIsTypedIntoACellStandsInTheText() {
		assertEquals(ROWS.replace(". 0.5 . .", ". 1 0.5 ."), typed(ROWS, "A", KeyColumn.READINGS, " . 1  0,5 0"));
		assertEquals(ROWS.replace("15 felt", "15 stack 7.5 5 2 felt"), typed(ROWS, "A", KeyColumn.SHIMS, "7.5+5 + 2"));
		assertEquals(ROWS.replace("stack 7.5 5 ", " "), typed(ROWS, "B", KeyColumn.SHIMS, ""));
	}

	@Test
	void whatIsShownCanBeTypedBack() {
		for (KeyColumn column : List.of(KeyColumn.READINGS, KeyColumn.SHIMS)) {
			for (KeyRow row : rows(new Bench(ROWS)).rows()) {
				if (!column.text(row).isEmpty()) {
					assertEquals(List.of(), RowEdit.of(row, column, column.text(row)));
				}
			}
		}
	}

	@Test
	void whatCannotBeWrittenIsRefusedInWords() {
		KeyRows rows = rows(new Bench(ROWS));
		KeyRow planned = rows.rows().get(0);
		KeyRow absent = rows.rows().get(2);
		assertEquals(Optional.<KeyJob>empty(), absent.job());
		for (String wrong : List.of("x", ". . . . .", "-1", "", "1e99")) {
			assertThrows(IllegalArgumentException.class, () -> RowEdit.of(planned, KeyColumn.READINGS, wrong));
		}
		assertThrows(IllegalArgumentException.class, () -> RowEdit.of(planned, KeyColumn.SHIMS, "7.5 0"));
		assertThrows(IllegalArgumentException.class, () -> RowEdit.of(planned, KeyColumn.SUM, "1"));
		assertThrows(IllegalArgumentException.class, () -> RowEdit.of(absent, KeyColumn.SHIMS, "1"));
	}
}
