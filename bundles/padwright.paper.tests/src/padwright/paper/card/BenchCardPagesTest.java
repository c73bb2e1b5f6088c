package padwright.paper.card;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.StringWriter;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

import padwright.drawing.scene.Scene;
import padwright.drawing.svg.SvgWriter;
import padwright.paper.page.PageFact;
import padwright.paper.page.PaperSize;
import padwright.paper.pdf.PdfText;

class BenchCardPagesTest {

	@ParameterizedTest
	@EnumSource(PaperSize.class)
	void aFluteTakesTwoPagesThatNameEveryKeyInTheOrderOfWork(PaperSize paper) throws IOException {
		BenchCard card = DemoCard.boehmFlute();
		List<Scene> pages = new BenchCardPages(card, paper).pages();
		assertEquals(17, card.keys().size());
		assertEquals(2, pages.size());
		String text = text(pages);
		int number = 0;
		for (CardKey key : card.keys()) {
			assertTrue(text.contains(++number + ". " + key.label() + " "), key.label());
		}
	}

	@Test
	void saysWhatToPlaceWhereAndWhatItGives() throws IOException {
		String text = text(new BenchCardPages(DemoCard.boehmFlute(), PaperSize.A4).pages());
		for (String expected : List.of("7.5 + 5 + 2 = 14.5", "target 14.6, error −0.1", "0.5 from 2 to 4",
				"1 from 8 to 10", "12 % → 71 %", "gap 0.3 to 0.8 thou at 3", "in the cup 1 from 7 to 10",
				"take out 0.5 from 11 to 1", "full shims +0.5", "closes F♯, A♯", "empty cup 12 15 18 15",
				"± 1.3 thou at worst", "F closes F♯", "screw in by 0.06 turn", "Foam 90 thou, no backing disc", "A-1042",
				"Spring", "2026-03-20", "13 to 16 thou")) {
			assertTrue(text.contains(expected), expected);
		}
	}

	@ParameterizedTest
	@EnumSource(PaperSize.class)
	void everyPageSaysHowToReadItWhatToBewareOfAndItsNumber(PaperSize paper) throws IOException {
		BenchCard card = DemoCard.boehmFlute();
		List<Scene> pages = new BenchCardPages(card, paper).pages();
		byte[] pdf = PdfText.write("Bench card", pages);
		for (int page = 1; page <= pages.size(); page++) {
			String text = PdfText.ofPage(pdf, page).replaceAll("\\s+", " ");
			for (String expected : List.of("Boehm flute, C foot", "All figures in thou", "seen from the pad side",
					"12 = hinge", "the feeler decides", "never file the rim", "Naphtha and alcohol burn",
					"page " + page + " of " + pages.size())) {
				assertTrue(text.contains(expected), expected + " on page " + page);
			}
		}
	}

	@ParameterizedTest
	@EnumSource(PaperSize.class)
	void everythingStaysWithinTheMargins(PaperSize paper) throws IOException {
		for (BenchCard card : List.of(DemoCard.boehmFlute(), overfull())) {
			byte[] pdf = PdfText.write("Bench card", new BenchCardPages(card, paper).pages());
			assertEquals(List.of(), PdfText.outside(pdf, 9.9).stream().limit(5).toList());
		}
	}

	@ParameterizedTest
	@EnumSource(PaperSize.class)
	void noTextLiesOverAnother(PaperSize paper) throws IOException {
		for (BenchCard card : List.of(DemoCard.boehmFlute(), overfull())) {
			byte[] pdf = PdfText.write("Bench card", new BenchCardPages(card, paper).pages());
			assertEquals(List.of(), PdfText.overlapping(pdf).stream().limit(5).toList());
		}
	}

	@Test
	void anOverfullCardStillNamesEveryKeyAndCutsNoCaution() throws IOException {
		BenchCard card = overfull();
		String text = text(new BenchCardPages(card, PaperSize.LETTER).pages());
		for (int number = 1; number <= card.keys().size(); number++) {
			assertTrue(text.contains(number + ". A very long"), "key " + number);
		}
		assertTrue(text.contains("and so on to the end."));
	}

	@Test
	void aQuarterToneFluteOf25PadsTakesThreePagesAtMost() {
		BenchCard flute = DemoCard.boehmFlute();
		List<CardKey> keys = new ArrayList<>(flute.keys());
		keys.addAll(flute.keys().subList(0, 8));
		BenchCard card = with(flute, keys, flute.cautions());
		assertTrue(new BenchCardPages(card, PaperSize.A4).pages().size() <= 3);
	}

	@Test
	void theSameCardGivesTheSameDocuments() {
		assertArrayEquals(
				PdfText.write("Bench card", new BenchCardPages(DemoCard.boehmFlute(), PaperSize.A4).pages()),
				PdfText.write("Bench card", new BenchCardPages(DemoCard.boehmFlute(), PaperSize.A4).pages()));
		assertEquals(svg(), svg());
	}

	private static String svg() {
		StringWriter out = new StringWriter();
		SvgWriter.write(out, new BenchCardPages(DemoCard.boehmFlute(), PaperSize.LETTER).pages().get(0));
		return out.toString();
	}

	@Test
	void aCardWithoutKeysIsRefused() {
		assertThrows(IllegalArgumentException.class, () -> with(DemoCard.boehmFlute(), List.of(), List.of()));
	}

	/** 40 keys whose every text is far too long. */
	static BenchCard overfull() {
		String words = "A very long word: " + "Überlagerungsschwingungskammerton".repeat(3) + " and so on. ";
		CardKey model = DemoCard.boehmFlute().keys().get(0);
		CardKey key = new CardKey("averylongnamewithoutspaces".repeat(4), words, words.repeat(3), words,
				model.height().map(height -> new CardHeight(height.target(), height.shims(), words)), model.readings(),
				model.gap(), model.earlierPieces(),
				model.work().map(work -> new CardWork(words, model.earlierPieces(), work.place())),
				Optional.of(new CardLevel(words, words, Optional.of(words))),
				Collections.nCopies(9, CardNote.warning(words.repeat(9))), Collections.nCopies(9, words));
		BenchCard card = with(DemoCard.boehmFlute(), Collections.nCopies(40, key),
				List.of(words.repeat(6) + "and so on to the end."));
		return new BenchCard(words, words, words, words, Optional.empty(),
				Collections.nCopies(7, new PageFact(words, words.repeat(3))), words, card.keys(),
				Collections.nCopies(30, new CardRegulation(words, words, words, words)),
				Collections.nCopies(90, new BenchCard.DiaryLine("2026-03-02 K", words)), card.cautions());
	}

	private static BenchCard with(BenchCard card, List<CardKey> keys, List<String> cautions) {
		return new BenchCard(card.title(), card.instrument(), card.serial(), card.planName(), card.date(),
				card.facts(), card.twelveLooksAt(), keys, card.regulations(), card.diary(), cautions);
	}

	private static String text(List<Scene> pages) throws IOException {
		byte[] pdf = PdfText.write("Bench card", pages);
		List<String> texts = new ArrayList<>();
		for (int page = 1; page <= pages.size(); page++) {
			texts.add(PdfText.ofPage(pdf, page));
		}
		return texts.stream().collect(Collectors.joining("\n")).replaceAll("\\s+", " ");
	}
}
