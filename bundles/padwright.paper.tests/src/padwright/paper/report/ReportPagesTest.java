package padwright.paper.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.StringWriter;
import java.util.List;

import org.junit.jupiter.api.Test;

import padwright.drawing.scene.Scene;
import padwright.drawing.svg.SvgWriter;
import padwright.paper.page.PaperSize;
import padwright.workup.report.Report;
import padwright.workup.report.ReportTable;

class ReportPagesTest {

	private static Report report(int rows) {
		ReportTable.Maker table = new ReportTable.Maker("Of the body").words("key", "state").figures("thou");
		for (int row = 0; row < rows; row++) {
			table.row("K" + row, "a state that is told at some length, so that columns are squeezed together", "1.5");
		}
		table.note("A note below.");
		return new Report("Leak of First", List.of("A model: the feeler decides."), List.of(table.table()));
	}

	private static String svg(Scene page) {
		StringWriter text = new StringWriter();
		SvgWriter.write(text, page);
		return text.toString();
	}

	@Test
	void everyRowAndSentenceIsOnAPage() {
		List<Scene> pages = new ReportPages(report(100), PaperSize.A4).pages();
		String all = String.join("", pages.stream().map(ReportPagesTest::svg).toList());
		assertTrue(pages.size() > 1, "more rows than a page holds");
		for (String text : List.of("Leak of First", "Of the body", "K0", "K99", "A note below.", "the feeler decides")) {
			assertTrue(all.contains(text), text);
		}
	}

	@Test
	void aReportWithoutRowsIsAPage() {
		assertEquals(1, new ReportPages(report(0), PaperSize.LETTER).pages().size());
	}
}
