package padwright.commands;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Nothing that a document says makes a command read or write a file that is not in its shop. */
class OutsideTheShopTest {

	private static final String SECRET = "Tellnobody";

	@TempDir
	private Path folder;
	private Path shop;
	private Path papers;
	private Map<Path, String> outside;

	@BeforeEach
	void layTraps() throws IOException {
		shop = folder.resolve("shop");
		papers = folder.resolve("papers");
		CommandRun.write(shop, "padwright.shop", "");
		CommandRun.write(folder, "secret.stock", "stock " + SECRET + " {\n\tmaterial " + SECRET + " { }\n}\n");
		CommandRun.write(folder, "secret.keys", "system " + SECRET + " {\n\tkey " + SECRET + "\n}\n");
		outside = files();
	}

	/** All that is not in the shop or among the papers that were asked for. */
	private Map<Path, String> files() throws IOException {
		Map<Path, String> texts = new TreeMap<>();
		try (Stream<Path> below = Files.walk(folder)) {
			for (Path file : below.filter(Files::isRegularFile).toList()) {
				if (!file.startsWith(shop) && !file.startsWith(papers)) {
					texts.put(file, Files.readString(file));
				}
			}
		}
		return texts;
	}

	private void assertHarmless(Object... command) throws IOException {
		CommandRun run = CommandRun.padwright(command);
		assertFalse((run.out() + run.err()).contains("there are " + SECRET), run.out() + run.err());
		assertFalse(run.showsItsInside(), run.err());
		assertEquals(outside, files());
	}

	@Test
	void namesThatLookLikePathsAreNames() throws IOException {
		CommandRun.write(shop, "s.keys", "system S \"../../x\" {\n\tkey A \"/etc/passwd\"\n}\n");
		CommandRun.write(shop, "t.stock", "stock Stores {\n\tmaterial m { source \"file:///etc/passwd\" }\n"
				+ "\tfeeler H 0.5 thou\n}\n");
		Path plan = CommandRun.write(shop, "p.plan", "plan P \"../../up\" for S serial \"../../../out\" with Stores {\n"
				+ "\tplayer \"../x\" { }\n\tread at 12 3 6 9\n\tkey A felt . . . 1 remark \"<a href='file:///etc'>\"\n}\n");
		for (String name : new String[] { "check", "solve", "leak", "drift", "regulate", "format" }) {
			assertHarmless(name, plan);
		}
		for (String name : new String[] { "card", "film", "handback" }) {
			assertHarmless(name, plan, "-o", papers);
		}
		try (Stream<Path> made = Files.walk(papers)) {
			assertFalse(made.anyMatch(file -> !file.normalize().startsWith(papers)));
		}
	}

	@Test
	void whatLiesBesideTheShopIsNotFound() throws IOException {
		Path plan = CommandRun.write(shop, "p.plan", "plan P for " + SECRET + " with " + SECRET + " {\n\tkey " + SECRET
				+ "\n}\n");
		assertHarmless("check", plan);
		assertEquals(ExitStatus.FINDINGS, CommandRun.padwright("check", plan).status());
	}

	/** Such as other languages have for taking in other files. */
	@Test
	void wordsThatElsewhereTakeInFilesAreMistakes() throws IOException {
		for (String word : new String[] { "import \"../secret.stock\"", "include \"../secret.keys\"",
				"<!DOCTYPE a [<!ENTITY x SYSTEM \"../secret.stock\">]>&x;", "#include <secret>" }) {
			Path plan = CommandRun.write(shop, "p.plan", word + "\nplan P for " + SECRET + " {\n}\n");
			assertHarmless("check", plan);
			assertEquals(ExitStatus.FINDINGS, CommandRun.padwright("check", plan).status(), word);
		}
	}
}
