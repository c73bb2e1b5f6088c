package padwright.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;

import org.eclipse.core.resources.IMarker;
import org.eclipse.core.runtime.preferences.IEclipsePreferences;
import org.eclipse.core.runtime.preferences.InstanceScope;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import padwright.engine.length.Length;
import padwright.workbench.prefs.Preferences;

/** What the user prefers counts at once. */
class PreferencesTest {

	private static final String PLAN = "plans/student-flute.plan";

	private final IEclipsePreferences said = InstanceScope.INSTANCE.getNode(Preferences.NODE);
	@TempDir
	private Path folder;
	private Driver bench;

	@BeforeEach
	void openShop() throws Exception {
		bench = Driver.withExampleShop(folder);
	}

	@AfterEach
	void closeShop() throws Exception {
		said.clear();
		bench.close();
	}

	private boolean hasWarnings() {
		return bench.markers(PLAN).stream()
				.anyMatch(marker -> marker.getAttribute(IMarker.SEVERITY, 0) == IMarker.SEVERITY_WARNING);
	}

	@Test
	void problemsShowWhatIsSevereEnough() throws Exception {
		Driver.waitFor("warnings", this::hasWarnings);
		said.put("problems.least", "ERROR");
		Driver.waitFor("no warnings", () -> !hasWarnings());
		assertFalse(bench.markers(PLAN).isEmpty());
		said.put("problems.least", "WARNING");
		Driver.waitFor("warnings again", this::hasWarnings);
	}

	@Test
	void aSpoiltSpreadIsHalfAThou() {
		said.put("newPlan.tolerance", "0.3");
		assertEquals(Length.thou("0.3"), Preferences.tolerance());
		said.put("newPlan.tolerance", "little");
		assertEquals(Length.thou("0.5"), Preferences.tolerance());
	}

	@Test
	void thePageHasAFieldForEach() throws Exception {
		Windows page = Windows.open("org.eclipse.ui.window.preferences", "Preferences");
		assertTrue(page.canPush("Apply and Close"));
		page.push("Cancel");
		page.waitForEnd();
	}
}
