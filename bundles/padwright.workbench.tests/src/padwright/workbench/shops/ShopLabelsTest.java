package padwright.workbench.shops;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;

import org.eclipse.core.resources.IMarker;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import padwright.workbench.Driver;

class ShopLabelsTest {

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
	void kindsAreShownAndWhatHasErrorsIsMarkedWithItsFolder() throws Exception {
		var plan = driver.file("plans/student-flute.plan");
		Driver.waitFor("errors", () -> ShopLabels.severity(plan) == IMarker.SEVERITY_ERROR);
		assertEquals(IMarker.SEVERITY_ERROR, ShopLabels.severity(plan.getParent()));
		assertEquals("student-flute (plan)", Driver.ui(() -> new ShopLabels().getText(plan)));
		assertEquals("boehm-b-foot (key system)",
				Driver.ui(() -> new ShopLabels().getText(driver.file("systems/boehm-b-foot.keys"))));
	}

	@Test
	void theExampleIsCopiedWhereHomeSays() {
		Path said = folder.toAbsolutePath();
		assertEquals(said, ExampleShop.home(said.toString(), "/elsewhere"));
		assertEquals(Path.of("/elsewhere"), ExampleShop.home(null, "/elsewhere"));
		assertEquals(Path.of("/elsewhere"), ExampleShop.home("", "/elsewhere"));
	}
}
