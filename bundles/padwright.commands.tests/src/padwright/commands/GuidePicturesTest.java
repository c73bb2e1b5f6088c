package padwright.commands;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The papers that the guide shows are those that the commands draw today, from the examples and from what its pages show. */
class GuidePicturesTest {

	private static final Path PICTURES = GuidePages.FOLDER.resolve("pictures");
	private static final Path FRESH = Path.of("target", "fresh");

	@TempDir
	private Path folder;

	/** Their last figure is how much of the page is shown, in mm. */
	@ParameterizedTest
	@CsvSource({
			"first-plan.html,     card plans/first.plan,            First-bench-card-1,     bench-card,       297",
			"first-plan.html,     film plans/first.plan,            First-film-1,           film-sheet,       297",
			"bench.html,          handback plans/whole-job.plan,    WholeJob-hand-back-1,   hand-back,        297",
			"systems.html,        sheet systems/boehm.keys,         BoehmC-key-layout-1,    key-layout,       297",
			"sound.html,          sound systems/boehm.keys --svg,   BoehmC-sound-1,         sound,            297",
			"instrument.html,     sheet systems/small.keys,         Small-key-layout-3,     small-fingerings, 96",
			"new-foot-joint.html, quote plans/new-foot.plan --svg --minutes 90 --rate 60, FootJoint-quote-1, foot-quote, 126",
			"job.html,            estimate plans/whole-job.plan,    WholeJob-estimate-1,    estimate,         176",
			"job.html,            invoice plans/whole-job.plan,     WholeJob-invoice-1,     invoice,          130" })
	void aPictureIsUpToDate(String page, String command, String drawn, String picture, int shown) throws IOException {
		ExampleShop.copiedTo(folder);
		GuidePages.examples(GuidePages.FOLDER.resolve(page)).stream().filter(example -> example.kind().equals("file"))
				.forEach(example -> CommandRun.write(folder, example.file().orElseThrow(), example.text()));
		boolean english = isUpToDate(Path.of(picture + ".svg"), drawn(command + " --language en", drawn, shown));
		boolean german = isUpToDate(Path.of("de", picture + ".svg"), drawn(command + " --language de", drawn, shown));
		assertTrue(english && german, "look at " + picture + ".svg under " + FRESH + ", and copy it over the picture of the guide");
	}

	/** The upper part of a page that a command draws. */
	private String drawn(String command, String page, int shown) throws IOException {
		Path out = folder.resolve("out");
		Stream<Object> words = Stream.of(command.split(" ")).map(word -> word.contains("/") ? folder.resolve(word) : word);
		CommandRun run = CommandRun.padwright(Stream.concat(words, Stream.of("-o", out)).toArray());
		assertEquals(ExitStatus.CLEAN, run.status(), run.err());
		return Files.readString(out.resolve(page + ".svg")).replaceFirst("height=\"297mm\" viewBox=\"0 0 210 297\"",
				"height=\"" + shown + "mm\" viewBox=\"0 0 210 " + shown + "\"");
	}

	private static boolean isUpToDate(Path picture, String fresh) throws IOException {
		Path published = PICTURES.resolve(picture);
		boolean isUpToDate = Files.exists(published) && Files.readString(published).equals(fresh);
		if (!isUpToDate) {
			Files.createDirectories(FRESH.resolve(picture).getParent());
			Files.writeString(FRESH.resolve(picture), fresh);
		}
		return isUpToDate;
	}

	@Test
	void everyPictureIsShown() throws IOException {
		assertEquals(Set.of(), pictures(PICTURES).filter(name -> !shown(GuideLanguage.ENGLISH).contains("\"pictures/" + name + "\""))
				.collect(Collectors.toSet()));
	}

	/** Those that have words are there in German, and it is these that the German pages show. */
	@Test
	void everyGermanPictureIsShownInGerman() throws IOException {
		String shown = shown(GuideLanguage.GERMAN);
		assertEquals(Set.of(), pictures(PICTURES.resolve("de"))
				.filter(name -> !shown.contains("\"../pictures/de/" + name + "\"") || shown.contains("\"../pictures/" + name + "\""))
				.collect(Collectors.toSet()));
	}

	private static Stream<String> pictures(Path folder) throws IOException {
		try (var files = Files.list(folder)) {
			return files.filter(Files::isRegularFile).map(file -> file.getFileName().toString()).toList().stream();
		}
	}

	private static String shown(GuideLanguage language) {
		return language.files().stream().map(GuidePages::text).collect(Collectors.joining());
	}
}
