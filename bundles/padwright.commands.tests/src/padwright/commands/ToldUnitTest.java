package padwright.commands;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import padwright.engine.length.LengthUnit;
import padwright.workup.words.ShownUnit;

/** Commands tell lengths in the unit that they were asked for, all of them; in German with a comma. */
class ToldUnitTest {

	/** A figure in the unit that was not asked for. What the shop wrote, such as "20 thou disc", stays; so does what it is to write. */
	private static final Pattern IN_THOU = Pattern.compile("thou\\b(?! disc)(?! film, never)");
	private static final String CUT = "\u2026";

	@TempDir
	private Path folder;

	@ParameterizedTest
	@CsvSource(delimiter = '|', value = {
			"card plans/first.plan | 0,1905 + 0,1905 = 0,381 | Ziel 0,385, Fehler \u22120,004 | 0,0127 von 2 bis 4"
					+ " | Spalt 0,024 bis 0,036 mm bei 9 | = 0,3937 | 0,3302 mm bis 0,4064 mm | Alle Zahlen in mm.",
			"card plans/whole-job.plan | Spalt 0,001 bis 0,013 mm bei 12 | 0,0254 mm Licht treibend, 0,0025 geblieben"
					+ " | im Deckel 0,0127 von 4 bis 8 | Zapfen Fu\u00dfst\u00fcck: auf dem Dorn geweitet, 0,0254 mm",
			"card plans/spring-service.plan | 0,0127 mm",
			"film plans/spring-service.plan | 0,0127 mm | 0,1905 mm | \u2300 18,5 mm",
			"handback plans/whole-job.plan | 0,0254 mm",
			"estimate plans/whole-job.plan | 234,50", "invoice plans/whole-job.plan | 234,50",
			"quote plans/first.plan --svg | polyester film 0,0127 mm | polyester film 0,1905 mm",
			"sheet systems/boehm.keys#BoehmC | 50 mm", "sound systems/alto.keys --svg | Hz" })
	void aPaperTellsAllInMillimetres(String row) throws IOException {
		String[] wanted = row.split(" *\\| *");
		CommandRun run = inMillimetres("de", wanted[0] + " -o " + folder);
		assertEquals(0, run.status(), run.err());
		String said = PageWords.in(folder);
		assertTold(said.replace("\n", " "), wanted);
		assertFalse(said.contains(CUT), () -> said.lines().filter(line -> line.contains(CUT)).collect(Collectors.joining("\n")));
	}

	@ParameterizedTest
	@CsvSource(delimiter = '|', value = {
			"solve plans/first.plan | 0.1905 + 0.1905 | in mm | \u22120.004 | up to 0.018 mm | 0.0127 from 2 to 4",
			"regulate plans/first.plan | 0.0127 light at driven | +0.05 | +0.003",
			"drift plans/whole-job.plan | 0.508 | +0.0002 to +0.0005 | about 0.001 mm",
			"leak plans/first.plan | mL/min", "history plans | lower G", "forecast plans | P-08",
			"learn plans | leaves of 0.0127 mm to 0.1016 mm | 0.0046 (0.0036 to 0.0056)",
			"quote plans/first.plan | polyester film 0.0127 mm", "stock plans | polyester film 0.1905 mm | rigid-base pad 17.5 mm",
			"choose plans/whole-job.plan | lay film of 0.0127 mm", "next plans | E-402",
			"compare plans/yearly/2023-yearly.plan plans/yearly/2024-yearly.plan | 0.0127",
			"check plans/old-flute.plan plans/student-flute.plan | no feeler of 0.0178 mm | Use one of 0.0127 mm, 0.0254 mm" })
	void aReportTellsAllInMillimetres(String row) {
		String[] wanted = row.split(" *\\| *");
		assertTold(inMillimetres("en", wanted[0]).out().replaceAll("Did you mean [^?]*\\?", ""), wanted);
	}

	private static void assertTold(String said, String[] wanted) {
		Arrays.stream(wanted).skip(1).forEach(each -> assertTrue(said.contains(each), () -> each + " in\n" + said));
		assertFalse(IN_THOU.matcher(said).find(), said);
	}

	private static CommandRun inMillimetres(String language, String command) {
		Stream<String> words = Stream.of(command.split(" ")).map(word -> word.contains(".plan") || word.contains(".keys")
				|| word.equals("plans") ? CommandRun.EXAMPLES.resolve(word).toString() : word);
		return CommandRun.padwright(Stream.concat(words, Stream.of("--language", language, "--unit", "mm")).toArray());
	}

	@Test
	void whatIsMadeForProgramsKeepsItsUnit() {
		Path plan = CommandRun.EXAMPLES.resolve("plans/first.plan");
		assertEquals(CommandRun.padwright("solve", plan, "--json").out(),
				CommandRun.padwright("--unit", "mm", "solve", plan, "--json").out());
	}

	@Test
	void theUnitCountsForOneCommandAlone() {
		Path plan = CommandRun.EXAMPLES.resolve("plans/first.plan");
		assertTrue(CommandRun.padwright("solve", plan, "--unit", "um").out().contains("190.5 + 190.5"));
		assertEquals(LengthUnit.THOU, ShownUnit.now());
	}

	/** Half a thou more or less is what the bench works to; in mm it must not be lost to a rounded figure. */
	@Test
	void answersThatAreWrittenIntoAPlanAreTheSame() throws IOException {
		ExampleShop shop = ExampleShop.copiedTo(folder);
		Path plan = shop.plan("first");
		String before = Files.readString(plan);
		CommandRun.padwright("solve", plan, "--write");
		String inThou = Files.readString(plan);
		Files.writeString(plan, before);
		CommandRun.padwright("solve", plan, "--write", "--unit", "mm");
		assertEquals(inThou, Files.readString(plan));
	}

	@Test
	void anUnknownUnitIsRefusedWithThoseThatAre() {
		CommandRun run = CommandRun.padwright("solve", CommandRun.EXAMPLES.resolve("plans/first.plan"), "--unit", "inch");
		assertEquals(ExitStatus.UNUSABLE, run.status());
		assertTrue(run.err().contains("--unit inch is no unit of length; write one of thou, mm, um"), run.err());
	}
}
