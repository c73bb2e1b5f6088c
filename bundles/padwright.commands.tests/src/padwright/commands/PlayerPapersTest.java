package padwright.commands;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import javax.imageio.ImageIO;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Estimate, invoice and letterhead, as a player and an accountant read them. */
class PlayerPapersTest {

	private static final List<String> INTERNAL = List.of("asked twice", "low notes need pressure", "bent, straightened",
			"Three pads and a service", "thou", "mL/min");

	@TempDir
	private Path folder;
	private ExampleShop shop;

	@BeforeEach
	void copyTheShop() throws IOException {
		shop = ExampleShop.copiedTo(folder);
	}

	@Test
	void theEstimateTellsWhatWasFoundAndEachOptionToTheCent() throws IOException {
		String words = words("estimate");
		for (String expected : List.of("torn at F; hard at E; noisy at D", "The foot joint goes together too loosely",
				"The cork in the head joint is dry", "Option 1: three pads, adjusted", "Option 2: all pads new", "14.00 42.00",
				"net 234.50 tax 19 % 44.56 total 279.06", "net 644.00 tax 19 % 122.36 total 766.36",
				"Agreed on 2026-02-25: three pads, adjusted.", "P-40")) {
			assertTrue(words.contains(expected), expected + " in " + words);
		}
		INTERNAL.forEach(internal -> assertFalse(words.contains(internal), internal));
	}

	@Test
	void theInvoiceNamesWhatIsNotAsAgreedAndAddsUp() throws IOException {
		String words = words("invoice");
		for (String expected : List.of("Invoice 118", "net 238.50 tax 19 % 45.32 total 283.82",
				"paid before on 2026-02-25 \u221250.00 to be paid 233.82", "felt bumper: 4.00, which was not in the estimate.",
				"Together it is 4.00 more than agreed, before tax.", "Handed over 2026-03-06")) {
			assertTrue(words.contains(expected), expected + " in " + words);
		}
		INTERNAL.forEach(internal -> assertFalse(words.contains(internal), internal));
	}

	@Test
	void whatWasLeftOutAndWhatCostsOtherwiseIsNamedToo() throws IOException {
		change("plans/whole-job.plan", "\t\t\titem \"head cork\" 12.50\n\t\t\titem \"felt bumper\" 4.00\n", "");
		change("plans/whole-job.plan", "\t\tdeposit 50.00 on 2026-02-25\n", "\t\tdeposit 500.00\n");
		String words = words("invoice");
		assertTrue(words.contains("head cork: left out; 12.50 were agreed."), words);
		assertTrue(words.contains("Together it is 12.50 less than agreed"), words);
		assertTrue(words.contains("to be paid back to you 235.82"), words);
	}

	@Test
	void anEstimateThatIsNotAnsweredAsksForTheAnswer() throws IOException {
		change("plans/whole-job.plan", "\t\tagreed three on 2026-02-25\n", "");
		assertSays("estimate", "What we found", "Please tell us which one you want; each stands for itself.");
		change("plans/whole-job.plan", "\t\t\toption all \"all pads new\" {\n\t\t\t\titem \"new pads\" 14.00 times 16\n"
				+ "\t\t\t\titem \"labour\" 420.00\n\t\t\t}\n", "");
		assertSays("estimate", "Please tell us whether you agree.");
	}

	@Test
	void theEstimateNamesEachStateOfPadsAndJointsAndNotesThatFail() throws IOException {
		change("plans/whole-job.plan", "key F found torn", "key F found tacky");
		change("plans/whole-job.plan", "key E found hard", "key E found swollen");
		change("plans/whole-job.plan", "key D found noisy", "key D found loose");
		change("plans/whole-job.plan", "tenon foot loose by 1 thou", "tenon foot tight");
		change("plans/whole-job.plan", "played before C4, D4 weak", "played before C4 silent on 2026-02-24 played before D4 weak");
		assertSays("estimate", "sticky at F; swollen at E; loose at D", "The foot joint goes together too tightly.",
				"The keys have play where they turn.", "Notes that need too much pressure: D4.", "Notes that do not answer: C4.");
	}

	@Test
	void anInvoiceSaysThatItIsAsAgreedOrThatNothingWas() throws IOException {
		change("plans/whole-job.plan", "\t\t\titem \"felt bumper\" 4.00\n", "");
		assertSays("invoice", "Against the estimate", "Agreed on 2026-02-25: three pads, adjusted", "The invoice is as agreed.",
				"Each amount is rounded to hundredths");
		change("plans/whole-job.plan", "\t\tagreed three on 2026-02-25\n", "");
		assertSays("invoice", "No estimate was agreed on before.");
	}

	@Test
	void whatCostsOtherwiseIsNamedWithBothAmounts() throws IOException {
		change("plans/whole-job.plan", "item \"labour\" 180.00\n\t\t\titem \"head cork\" 12.50\n\t\t\titem \"felt bumper\" 4.00",
				"item \"labour\" 176.00\n\t\t\titem \"head cork\" 12.50\n\t\t\titem \"felt bumper\" 4.00");
		assertSays("invoice", "labour: 176.00 instead of 180.00.", "Together it is as much as agreed.");
	}

	private void assertSays(String paper, String... sentences) throws IOException {
		String words = words(paper);
		for (String sentence : sentences) {
			assertTrue(words.contains(sentence), sentence + " in " + words);
		}
	}

	@Test
	void anInvoiceOfWorkThatIsNotSaidAsDoneIsRefusedWithTheList() throws IOException {
		change("plans/whole-job.plan", " left 0.1 thou at driver", "");
		CommandRun run = draw("invoice");
		assertEquals(ExitStatus.FINDINGS, run.status());
		assertTrue(run.err().contains("D > F\u266F"), run.err());
		assertFalse(Files.exists(folder.resolve("out/WholeJob-invoice.pdf")));
	}

	@Test
	void withoutAnEstimateThereIsNothingToDraw() {
		CommandRun run = CommandRun.padwright("estimate", shop.plan("first"), "-o", folder.resolve("out"));
		assertEquals(ExitStatus.UNUSABLE, run.status());
		assertTrue(run.err().contains("has no estimate; write estimate"), run.err());
	}

	@Test
	void theLetterheadCarriesLinesLogoCurrencyAndTheShopsOwnWords() throws IOException {
		writeLetterhead();
		BufferedImage logo = new BufferedImage(60, 30, BufferedImage.TYPE_INT_RGB);
		ImageIO.write(logo, "png", folder.resolve("stock/logo.png").toFile());
		String page = Files.readString(svg("invoice", draw("invoice")));
		assertTrue(page.contains("data:image/png;base64,"));
		String words = words("invoice");
		for (String expected : List.of("The invented bench", "1 Invented Street", "amount, EUR", "Please pay within 14 days.",
				"tax 7 %")) {
			assertTrue(words.contains(expected), expected + " in " + words);
		}
		assertFalse(words.contains("four weeks"), words);
		assertTrue(words("estimate").contains("This estimate holds for four weeks."));
		assertTrue(words("handback").contains("The invented bench"));
	}

	@Test
	void aLogoThatIsMissingOrNoPictureIsToldAndThePageIsDrawn() throws IOException {
		writeLetterhead();
		CommandRun missing = draw("invoice");
		assertEquals(ExitStatus.CLEAN, missing.status());
		assertTrue(missing.err().contains("logo.png was left out: there is no such file"), missing.err());
		Files.writeString(folder.resolve("stock/logo.png"), "no picture");
		CommandRun spoilt = draw("invoice");
		assertTrue(spoilt.err().contains("logo.png was left out: it is no PNG or JPEG"), spoilt.err());
		assertTrue(words("invoice").contains("The invented bench"));
	}

	@Test
	void aWarrantyTellsTheDayOfTheServiceThatItMakesGood() throws IOException {
		Files.writeString(folder.resolve("plans/again.plan"), """
				plan Again for BoehmC serial "E-402" with Bench {
					job {
						warranty for WholeJob on 2026-05-02
						stage look on 2026-05-02
					}
					// a row, so that there is something to draw
				}
				""".replace("\t// a row, so that there is something to draw\n", "").replace("\tjob {", "\tkey F found sound\n\tjob {"));
		CommandRun run = CommandRun.padwright("handback", shop.plan("again"), "-o", folder.resolve("out"));
		assertEquals(ExitStatus.CLEAN, run.status(), run.err());
		String words = text(folder.resolve("out/Again-hand-back-1.svg"));
		assertTrue(words.contains("This visit makes good our earlier work of 2026-03-06."), words);
		assertFalse(words.contains("It is right as it leaves us"), words);
	}

	@Test
	void onePlanOfSeveralInAFileIsNamedBehindIt() throws IOException {
		Path several = folder.resolve("plans/several.plan");
		Files.writeString(several, "plan One for BoehmC with Bench { job { came on 2026-01-02 } }\n"
				+ "plan Two for BoehmC with Bench { job { came on 2026-01-03 } }\n");
		CommandRun unnamed = CommandRun.padwright("next", several);
		assertEquals(ExitStatus.UNUSABLE, unnamed.status());
		assertTrue(unnamed.err().contains("One, Two") && unnamed.err().contains("several.plan#One"), unnamed.err());
		CommandRun two = CommandRun.padwright("next", several + "#Two", "--json");
		assertEquals("Two", two.json().getAsJsonArray("steps").get(0).getAsJsonObject().get("plan").getAsString());
		assertTrue(CommandRun.padwright("next", several + "#Three").err().contains("holds no plan Three; it holds One, Two"));
	}

	private void writeLetterhead() throws IOException {
		Path stock = folder.resolve("stock/processes.stock");
		String text = Files.readString(stock);
		Files.writeString(stock, text.substring(0, text.lastIndexOf('}')) + """
					letterhead "The invented bench", "1 Invented Street" logo "logo.png" tax 7 % currency "EUR"
						on estimate says "This estimate holds for four weeks."
						on invoice says "Please pay within 14 days."
				}
				""");
		change("plans/whole-job.plan", "invoice 118 tax 19 %", "invoice 118");
	}

	private void change(String file, String was, String is) throws IOException {
		Path place = folder.resolve(file);
		String text = Files.readString(place);
		assertTrue(text.contains(was), was);
		Files.writeString(place, text.replace(was, is));
	}

	private CommandRun draw(String paper) {
		return CommandRun.padwright(paper, shop.plan("whole-job"), "-o", folder.resolve("out"));
	}

	private Path svg(String paper, CommandRun run) {
		assertEquals(ExitStatus.CLEAN, run.status(), run.err());
		return folder.resolve("out/WholeJob-" + paper.replace("handback", "hand-back") + "-1.svg");
	}

	private String words(String paper) throws IOException {
		return text(svg(paper, draw(paper)));
	}

	private static String text(Path svg) throws IOException {
		return Files.readString(svg).replaceAll("<[^>]*>", " ").replaceAll("\\s+", " ");
	}
}
