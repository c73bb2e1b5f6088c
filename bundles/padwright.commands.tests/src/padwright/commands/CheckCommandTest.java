package padwright.commands;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import com.google.gson.JsonObject;
import com.google.gson.JsonParser;

class CheckCommandTest {

	private static final Pattern FINDING = Pattern.compile("(.+):(\\d+):(\\d+) (error|warning|info) ([a-z-]+) \\S.*[.?]");

	@TempDir
	private Path folder;
	private ExampleShop shop;

	@BeforeEach
	void copyTheShop() throws IOException {
		shop = ExampleShop.copiedTo(folder);
	}

	@Test
	void aCleanPlanHasStatusZero() {
		CommandRun run = CommandRun.padwright("check", shop.plan("spring-service"), folder.resolve("systems"));
		assertEquals(ExitStatus.CLEAN, run.status(), run.out());
		assertEquals("", run.out());
	}

	@Test
	void findingsAreOneLineEach() {
		CommandRun run = CommandRun.padwright("check", shop.plan("student-flute"));
		assertEquals(ExitStatus.FINDINGS, run.status());
		assertTrue(run.out().lines().count() > 10);
		run.out().lines().forEach(line -> assertTrue(FINDING.matcher(line).matches(), line));
	}

	@Test
	void theStudentFluteShowsWhatCanGoWrong() {
		JsonObject json = JsonParser.parseString(CommandRun.padwright("check", "--json", shop.plan("student-flute")).out())
				.getAsJsonObject();
		Set<String> codes = new TreeSet<>();
		json.getAsJsonArray("findings").forEach(finding -> codes.add(finding.getAsJsonObject().get("code").getAsString()));
		assertTrue(codes.containsAll(Set.of("stack-height", "backing-missing", "reading-count", "film-not-stocked",
				"rule-broken", "reading-unknown-leaf", "unit-suspect", "arc-empty", "duplicate-service", "link",
				"not-coupled")), codes.toString());
		assertEquals(json.getAsJsonArray("findings").size(),
				json.get("errors").getAsInt() + json.get("warnings").getAsInt() + json.get("remarks").getAsInt());
	}

	@Test
	void aFileThatIsNoTextIsUnusable() throws IOException {
		Path plan = shop.plan("spring-service");
		Files.write(plan, "plan Größe".getBytes(StandardCharsets.ISO_8859_1));
		CommandRun run = CommandRun.padwright("check", plan);
		assertEquals(ExitStatus.UNUSABLE, run.status());
		assertTrue(run.out().contains("UTF-8"), run.out());
	}

	@Test
	void anEmptyFolderIsUnusable(@TempDir Path empty) {
		assertEquals(ExitStatus.UNUSABLE, CommandRun.padwright("check", empty).status());
	}
}
