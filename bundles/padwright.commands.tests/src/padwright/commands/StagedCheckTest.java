package padwright.commands;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import padwright.language.shop.ShopFinding;

/** What is staged in a real repository of git, and what it breaks in files that are not. */
class StagedCheckTest {

	private static final String SYSTEM = "system Mini {\n\tkey A cup 16 mm\n\tkey B closes A cup 16 mm\n}\n";
	private static final String STOCK = "stock Bench {\n\tpad Soft { }\n}\n";
	private static final String PLAN = "plan Work for Mini with Bench {\n\tfit Soft\n\tkey A\n\tkey B\n}\n";
	private static final String WRONG = "plan Wrong for Mini with Bench {\n\tfit Hard\n\tkey A\n}\n";

	@TempDir
	private Path folder;

	@BeforeEach
	void commitShop() throws Exception {
		write("padwright.shop", "");
		write("systems/mini.keys", SYSTEM);
		write("bench.stock", STOCK);
		write("plans/work.plan", PLAN);
		write("plans/wrong.plan", WRONG);
		git("init", "-q", ".");
		commit();
	}

	private void commit() throws Exception {
		git("add", "-A");
		git("-c", "user.name=Bench", "-c", "user.email=bench@example.invalid", "commit", "-q", "-m", "Keep");
	}

	private void write(String name, String text) throws IOException {
		Path file = folder.resolve(name);
		Files.createDirectories(file.getParent());
		Files.writeString(file, text);
	}

	private void git(String... words) throws Exception {
		List<String> command = new ArrayList<>(List.of("git"));
		command.addAll(List.of(words));
		Process git = new ProcessBuilder(command).directory(folder.toFile()).redirectErrorStream(true).start();
		String said = new String(git.getInputStream().readAllBytes());
		assertEquals(0, git.waitFor(), said);
	}

	private CheckOutcome check() {
		return StagedCheck.of(StagedFiles.around(folder), false, new PrintWriter(new StringWriter())).orElseThrow();
	}

	private static List<String> told(List<ShopFinding> findings) {
		return findings.stream().map(found -> found.file().getFileName() + ":" + found.line() + " " + found.code())
				.toList();
	}

	@Test
	void nothingStagedIsNothingChecked() {
		assertEquals(new CheckOutcome(0, List.of(), 0, List.of()), check());
	}

	@Test
	void aStagedPlanIsCheckedAlone() throws Exception {
		write("plans/work.plan", PLAN.replace("key A", "key C"));
		git("add", "plans/work.plan");
		CheckOutcome outcome = check();
		assertEquals(List.of("work.plan:3 link"), told(outcome.findings()));
		assertEquals(0, outcome.others());
	}

	@Test
	void whatAStagedSystemBreaksIsToldAndNothingThatWasWrongBefore() throws Exception {
		write("systems/mini.keys", SYSTEM.replace("key A", "key As").replace("closes A", "closes As"));
		git("add", "systems/mini.keys");
		CheckOutcome outcome = check();
		assertEquals(1, outcome.files());
		assertEquals(3, outcome.others());
		assertEquals(List.of(), outcome.findings());
		assertEquals(List.of("work.plan:3 link", "wrong.plan:3 link"), told(outcome.broken()));
	}

	@Test
	void whatTheWorkingTreeMendsButIsNotStagedStaysBroken() throws Exception {
		write("bench.stock", STOCK.replace("Soft", "Softer"));
		git("add", "bench.stock");
		write("plans/work.plan", PLAN.replace("Soft", "Softer"));
		assertEquals(List.of("work.plan:2 link"), told(check().broken()));
		git("add", "plans/work.plan");
		assertEquals(List.of(), check().all());
	}

	@Test
	void onlyWhatIsStagedOfASystemCounts() throws Exception {
		write("systems/mini.keys", SYSTEM.replace("16 mm", "17 mm"));
		git("add", "systems/mini.keys");
		write("systems/mini.keys", "system Other { }\n");
		assertEquals(List.of(), check().all());
	}

	@Test
	void aStockThatIsRemovedBreaksThePlansThatUseIt() throws Exception {
		git("rm", "-q", "--cached", "bench.stock");
		CheckOutcome outcome = check();
		assertEquals(0, outcome.files());
		assertTrue(told(outcome.broken()).contains("work.plan:1 link"), outcome.toString());
	}

	@Test
	void aFileThatIsOnlyMovedBreaksNothing() throws Exception {
		git("mv", "bench.stock", "main.stock");
		CheckOutcome outcome = check();
		assertEquals(1, outcome.files());
		assertEquals(List.of(), outcome.all());
	}

	/** And what is staged counts, whatever the working copies hold. */
	@Test
	void manyFilesWithAnyNamesAreReadAsTheyAreStaged() throws Exception {
		for (int number = 0; number < 20; number++) {
			write("plans/Größe " + number + "\n.plan", PLAN.replace("plan Work", "plan Größe" + number));
		}
		git("add", "-A");
		write("plans/Größe 3\n.plan", "nothing");
		CheckOutcome outcome = check();
		assertEquals(20, outcome.files());
		assertEquals(List.of(), outcome.all());
	}

	@Test
	void theFirstCommitOfAllIsCheckedToo(@TempDir Path fresh) throws Exception {
		folder = fresh;
		write("mini.keys", SYSTEM.replace("closes A", "closes Z"));
		git("init", "-q", ".");
		git("add", "-A");
		assertEquals(List.of("mini.keys:3 link"), told(check().findings()));
	}
}
