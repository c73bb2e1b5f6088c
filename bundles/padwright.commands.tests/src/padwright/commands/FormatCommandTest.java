package padwright.commands;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FormatCommandTest {

	@TempDir
	private Path folder;

	@Test
	void aSqueezedPlanIsLaidOutAndItsOldTextKept() throws IOException {
		Path plan = ExampleShop.copiedTo(folder).plan("spring-service");
		String laidOut = Files.readString(plan);
		String squeezed = laidOut.replace("\n\tkey", " key");
		Files.writeString(plan, squeezed);
		assertEquals(ExitStatus.CLEAN, CommandRun.padwright("format", plan).status());
		assertEquals(laidOut, Files.readString(plan));
		assertEquals(squeezed, Files.readString(plan.resolveSibling("spring-service.plan.bak")));
	}

	@Test
	void textThatCannotBeReadIsLeftAlone() throws IOException {
		Path plan = ExampleShop.copiedTo(folder).plan("spring-service");
		String broken = Files.readString(plan).replace("empty", "emty");
		Files.writeString(plan, broken);
		CommandRun run = CommandRun.padwright("format", plan);
		assertEquals(ExitStatus.FINDINGS, run.status());
		assertEquals(broken, Files.readString(plan));
		assertTrue(run.err().contains("left as it is"), run.err());
	}
}
