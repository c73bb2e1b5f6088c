package padwright.workbench.reports;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.math.BigDecimal;
import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import padwright.engine.quote.Labour;
import padwright.workbench.questions.QuoteDialog;
import padwright.workbench.questions.QuoteTerms;

/** What is asked for before a report is made. */
class QuestionsTest {

	@Test
	void noMinutesMeanPartsAlone() {
		assertEquals(QuoteTerms.PARTS, QuoteDialog.terms("", "60", ""));
		assertEquals(new QuoteTerms(new Labour(new BigDecimal("90"), new BigDecimal("62.5")), new BigDecimal("19")),
				QuoteDialog.terms("90", "62,5", "19"));
	}

	@ParameterizedTest
	@CsvSource({ "90, '', 19", "-1, 60, 19", "90, 60, much", "90, 60, -19", "90, 60000000, 0" })
	void whatIsNoAmountIsSaidToBeNone(String minutes, String rate, String tax) {
		assertThrows(IllegalArgumentException.class, () -> QuoteDialog.terms(minutes, rate, tax));
	}

	@Test
	void notesAreSeparatedByBlanksOrCommas() {
		DiagnosisDialog.Notes notes = DiagnosisDialog.notes("D4, E4 F#4", "G4;A4");
		assertEquals(List.of("D4", "E4", "F#4"), notes.bad());
		assertEquals(List.of("G4", "A4"), notes.good());
		assertThrows(IllegalArgumentException.class, () -> DiagnosisDialog.notes(" ", "G4"));
	}
}
