package padwright.paper.handback;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.Collections;
import java.util.List;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

import padwright.paper.handback.HandBack.Section;
import padwright.paper.page.HeadText;
import padwright.paper.page.PaperSize;
import padwright.paper.pdf.PdfText;

class HandBackPagesTest {

	private static final String LONG = "Words that go on and on until the line has to break somewhere. ".repeat(4);

	@ParameterizedTest
	@EnumSource(PaperSize.class)
	void everyParagraphIsOnAPageAndNothingLeavesIt(PaperSize paper) throws IOException {
		HandBack words = new HandBack(new HeadText("Flute", "serial 1", "Back", List.of()), "Back",
				List.of(new Section("Done", Collections.nCopies(40, LONG)), new Section("Care", List.of("The last words."))));
		byte[] pdf = PdfText.write("Back", new HandBackPages(words, paper).pages());
		int pages = new HandBackPages(words, paper).pages().size();
		assertTrue(pages > 1);
		assertEquals(List.of(), PdfText.outside(pdf, 9.9).stream().limit(5).toList());
		String last = PdfText.ofPage(pdf, pages);
		assertTrue(last.contains("Care") && last.contains("The last words."), last);
		assertArrayEquals(pdf, PdfText.write("Back", new HandBackPages(words, paper).pages()));
	}
}
