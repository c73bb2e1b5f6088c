package padwright.views.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;

import org.junit.jupiter.api.Test;

import padwright.workup.report.ReportTable;

class ReportRowsTest {

	private static final ReportRows ROWS = rows();

	private static ReportRows rows() {
		ReportTable.Maker table = new ReportTable.Maker("").words("key").figures("leak");
		table.ofKey("F", "F", "10,5");
		table.ofKey("A", "A", "\u22122.5");
		table.ofKey("E", "E", "");
		table.ofKey("Fs", "F\u266f", "9.25");
		return ReportRows.of(table.table());
	}

	private static List<String> keys(ReportRows rows) {
		return rows.rows().stream().map(row -> row.key().orElseThrow()).toList();
	}

	@Test
	void figuresAreSortedBySizeAndWhatSaysNothingIsLast() {
		assertEquals(List.of("A", "Fs", "F", "E"), keys(ROWS.sorted(1, false)));
		assertEquals(List.of("F", "Fs", "A", "E"), keys(ROWS.sorted(1, true)));
	}

	@Test
	void wordsAreSortedAsInADictionary() {
		assertEquals("A", keys(ROWS.sorted(0, false)).get(0));
		assertEquals("A", keys(ROWS.sorted(0, true)).get(3));
	}

	@Test
	void everyWordMustBeSaid() {
		assertEquals(List.of("Fs"), keys(ROWS.filtered("f\u266f 9.2")));
		assertEquals(4, ROWS.filtered(" ").rows().size());
	}

	@Test
	void aSpreadsheetGetsHeadingsAndRows() {
		assertEquals("key\tleak\nF\u266f\t9.25\n", ROWS.filtered("9.25").tabSeparated());
	}
}
