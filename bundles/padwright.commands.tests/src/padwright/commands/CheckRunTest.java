package padwright.commands;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A check that is ended from the keyboard. */
class CheckRunTest {

	private final StringWriter messages = new StringWriter();

	@TempDir
	private Path folder;

	private CheckRun run() {
		return new CheckRun(new Progress(new PrintWriter(messages), "checking", 1));
	}

	private ChosenFiles shop() {
		Path plan = CommandRun.write(folder, "a.plan", "plan A for Nothing {\n}\n");
		return ChosenFiles.in(List.of(plan), Map.of()).get(0);
	}

	@Test
	void judgesNothingMoreOnceStoppedAndSaysSo() {
		ChosenFiles shop = shop();
		CheckRun run = run();
		run.stop();
		assertEquals(List.of(), run.findings(shop, Map.of(), true));
		assertTrue(run.isStopped());
		run.close();
		assertTrue(messages.toString().startsWith("stopped at 0 of 1"), messages.toString());
	}

	@Test
	void saysNothingWhereAllWasJudged() {
		ChosenFiles shop = shop();
		try (CheckRun run = run()) {
			assertEquals(1, run.findings(shop, Map.of(), true).size());
			assertFalse(run.isStopped());
		}
		assertEquals("", messages.toString());
	}
}
