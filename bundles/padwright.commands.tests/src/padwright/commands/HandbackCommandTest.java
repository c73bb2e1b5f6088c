package padwright.commands;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class HandbackCommandTest {

	private static final List<String> JARGON = List.of("thou", "shim", "seat", "feeler", "spread", "backing",
			"coupl", "regulat", "saddle", "tilt", "rim ", "cup", " film", "H315");

	@TempDir
	private Path folder;
	private ExampleShop shop;

	@BeforeEach
	void copyTheShop() throws IOException {
		shop = ExampleShop.copiedTo(folder);
	}

	@Test
	void saysInPlainWordsWhatWasDone() throws IOException {
		String words = words("whole-job", "WholeJob");
		for (String expected : List.of("3 pads were replaced", "One pad was sound and stayed", "torn at F; hard at E; noisy at D",
				"answering well: C4, D4", "Around 2026-04-06, for a second look that costs nothing",
				"4 pads were checked all around as they left", "One spring was replaced",
				"One cork or felt was replaced", "Play in the mechanism was taken up at 2 places", "foot joint",
				"The cork in the head joint was replaced", "It was played before it left", "adjusted to close at the same moment",
				"rigid-base pad", "safety data sheets", "In a year")) {
			assertTrue(words.contains(expected), expected + " in " + words);
		}
		JARGON.forEach(jargon -> assertFalse(words.replace("without keys", "").contains(jargon), jargon));
	}

	@Test
	void keepsRemarksOfTheShopAndWhatSpeaksAgainstAPadFromThePlayer() throws IOException {
		String words = words("whole-job", "WholeJob");
		for (String internal : List.of("asked twice", "low notes need pressure", "dear", "To know", "bent, straightened")) {
			assertFalse(words.contains(internal), internal + " in " + words);
		}
	}

	@Test
	void speaksOfSalivaOnlyToWhomItConcerns() throws IOException {
		assertFalse(words("whole-job", "WholeJob").contains("saliva is hard"));
		Path plan = shop.plan("whole-job");
		Files.writeString(plan, Files.readString(plan).replace("saliva mild", "saliva acidic"));
		assertTrue(words("whole-job", "WholeJob").contains("saliva is hard"));
	}

	@Test
	void tellsEveryoneWhatToMindAndWhenToComeBack() throws IOException {
		assertSays("Swab the instrument dry", "Play with clean hands and a clean mouth", "use no powder",
				"Keep it from heat, strong sun and cold cars", "never turn a screw to make a pad close", "Weather moves pads",
				"Wipe what touches your lips before you play", "In a year, for cleaning", "Sooner, if a note needs more pressure",
				"At once after a fall: do not play it", "rather than adjust or glue anything yourself",
				"what they say counts more than this page");
	}

	@Test
	void namesWhatNewPadsAreMadeOfWithWhatIsFromAnimals() throws IOException {
		change("fit Rigid on Disc20", "fit Felt");
		assertSays("New: woven felt pad, made of ", "Made from animals: ", "bladder skin", "Tell us if you are allergic");
	}

	@Test
	void saysWhatDidNotComeRight() throws IOException {
		change("left 0.1 thou at driver", "left 2 thou at driver");
		change("played after C4, D4 good on 2026-03-05", "played after C4 weak on 2026-03-05 played after D4 silent on 2026-03-05");
		assertSays("Keys that move together were adjusted; some still close one after the other.",
				"Played as it left, and still weak: C4.", "Played as it left, and still not answering: D4.");
		assertFalse(words("whole-job", "WholeJob").contains("It is right as it leaves us"));
	}

	@Test
	void countsWhatWasRenewedAndNamesAPartThatWasOnlyCleaned() throws IOException {
		change("spring Ds steel replaced", "spring Ds, E steel replaced");
		change("bumper D felt 0.8 mm replaced", "bumper D, E felt 0.8 mm replaced");
		change("tenon foot expanded 1 thou", "tenon foot cleaned");
		assertSays("2 springs were replaced.", "2 corks and felts were replaced.",
				"The foot joint was cleaned where it goes together.");
	}

	@Test
	void aVisitThatChangedNothingSaysSo() throws IOException {
		Files.writeString(shop.plan("whole-job"), """
				plan WholeJob for BoehmC with Bench {
					key F
					job {
						stage look on 2026-05-02
					}
				}
				""");
		assertSays("It was looked at, and nothing was changed.", "The pads that were in it.");
	}

	private void change(String was, String is) throws IOException {
		Path plan = shop.plan("whole-job");
		String text = Files.readString(plan);
		assertTrue(text.contains(was), was);
		Files.writeString(plan, text.replace(was, is));
	}

	private void assertSays(String... sentences) throws IOException {
		String words = words("whole-job", "WholeJob");
		for (String sentence : sentences) {
			assertTrue(words.contains(sentence), sentence + " in " + words);
		}
	}

	@Test
	void aPageThatWouldPromiseMoreThanIsDoneIsRefusedWithTheList() {
		Path plan = shop.plan("first");
		CommandRun run = CommandRun.padwright("handback", plan, "-o", folder.resolve("out"));
		assertEquals(ExitStatus.FINDINGS, run.status());
		for (String open : List.of("A new pad is planned for F♯, F, D♯", "last readings of F♯, F, D♯", "Light was found at F > F♯")) {
			assertTrue(run.err().contains(open), run.err());
		}
		assertFalse(Files.exists(folder.resolve("out").resolve("First-hand-back.pdf")));
	}

	@Test
	void whatIsLeftOpenAloneIsListed() throws IOException {
		Path plan = shop.plan("whole-job");
		Files.writeString(plan, Files.readString(plan).replace("on 2026-03-04 by \"M\" shim none delivered . . . . on 2026-03-05 by",
				"by \"M\" shim none delivered . . . . by").replace(" left 0.1 thou at driver", ""));
		CommandRun run = CommandRun.padwright("handback", plan, "-o", folder.resolve("out"));
		assertEquals(ExitStatus.FINDINGS, run.status());
		assertTrue(run.err().contains("E was wetted, ironed or clamped and not felt again: not before 2026-03-04"), run.err());
		assertTrue(run.err().contains("D > F♯") && !run.err().contains("F > F♯"), run.err());
	}

	@Test
	void theSamePlanGivesTheSameBytes() throws IOException {
		words("whole-job", "WholeJob");
		byte[] once = Files.readAllBytes(folder.resolve("out/WholeJob-hand-back.pdf"));
		words("whole-job", "WholeJob");
		assertArrayEquals(once, Files.readAllBytes(folder.resolve("out/WholeJob-hand-back.pdf")));
	}

	/** All words of the first page, lines joined. */
	private String words(String plan, String name) throws IOException {
		CommandRun run = CommandRun.padwright("handback", shop.plan(plan), "-o", folder.resolve("out"));
		assertEquals(ExitStatus.CLEAN, run.status(), run.err());
		return Files.readString(folder.resolve("out").resolve(name + "-hand-back-1.svg")).replaceAll("<[^>]*>", " ")
				.replaceAll("\\s+", " ");
	}
}
