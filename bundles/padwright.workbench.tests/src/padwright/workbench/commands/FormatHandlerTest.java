package padwright.workbench.commands;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;

import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import padwright.workbench.Driver;

/** Why nothing was laid out. */
class FormatHandlerTest {

	private static final String PLAN = "plans/first.plan";

	@TempDir
	private Path folder;
	private Driver driver;

	@BeforeEach
	void openShop() throws Exception {
		driver = Driver.withExampleShop(folder);
	}

	@AfterEach
	void closeShop() throws Exception {
		driver.close();
	}

	@Test
	void aTextThatIsLaidOutIsSaidToBe() {
		assertEquals("The text is laid out already", FormatHandler.whyNot(driver.file(PLAN)));
	}

	@Test
	void aTextThatCannotBeReadIsLeftAsItIs() throws Exception {
		var editor = driver.open(PLAN);
		Driver.replace(editor, "\tkey F ", "\tkey F felt . shim 0.5 from\n\tkey E ");
		Driver.waitFor("the line to put right", () -> FormatHandler.whyNot(driver.file(PLAN))
				.equals("Not laid out, since line 7 cannot be read: put it right first"));
	}
}
