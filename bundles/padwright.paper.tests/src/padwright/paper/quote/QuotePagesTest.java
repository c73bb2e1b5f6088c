package padwright.paper.quote;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.List;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

import padwright.paper.page.PaperSize;
import padwright.paper.pdf.PdfText;

class QuotePagesTest {

	/** Exact: 5 × 14.005 = 70.025 is 70.03; 200 minutes at 61.50 are 205.00. */
	@ParameterizedTest
	@EnumSource(PaperSize.class)
	void saysEveryFigureAndWhatIsInNoSum(PaperSize paper) throws IOException {
		byte[] pdf = PdfText.write("Quote", new QuotePages(DemoQuote.sheet(), paper).pages());
		String text = PdfText.ofPage(pdf, 1).replaceAll("\\s+", " ");
		for (String expected : List.of("rigid-base pad 17.5 mm 5 14.005 70.03", "200 minutes at 61.50 an hour 205.00",
				"tax 7.7 %", "3 × felt", "head cork: dry", "H315 Causes skin irritation.", "page 1 of 1")) {
			assertTrue(text.contains(expected), expected + " in " + text);
		}
		assertEquals(List.of(), PdfText.outside(pdf, 9.9).stream().limit(5).toList());
		assertEquals(List.of(), PdfText.overlapping(pdf).stream().limit(5).toList());
		assertArrayEquals(pdf, PdfText.write("Quote", new QuotePages(DemoQuote.sheet(), paper).pages()));
	}

	@ParameterizedTest
	@EnumSource(PaperSize.class)
	void aLongOneRunsOverPagesWithItsSumsTogether(PaperSize paper) throws IOException {
		int pages = new QuotePages(DemoQuote.sheet(70), paper).pages().size();
		assertTrue(pages > 1);
		byte[] pdf = PdfText.write("Quote", new QuotePages(DemoQuote.sheet(70), paper).pages());
		int withTotal = 0;
		for (int page = 1; page <= pages; page++) {
			String text = PdfText.ofPage(pdf, page);
			assertEquals(text.contains("\ntotal "), text.contains("\nnet "), text);
			withTotal += text.contains("\ntotal ") ? 1 : 0;
		}
		assertEquals(1, withTotal);
		assertEquals(List.of(), PdfText.outside(pdf, 9.9).stream().limit(5).toList());
	}
}
