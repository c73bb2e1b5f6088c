package padwright.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Arrays;

import org.eclipse.core.resources.IMarker;
import org.eclipse.core.runtime.preferences.IEclipsePreferences;
import org.eclipse.core.runtime.preferences.InstanceScope;
import org.eclipse.swt.widgets.Table;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import padwright.engine.length.Length;
import padwright.views.rows.KeyColumn;
import padwright.workbench.prefs.Preferences;
import padwright.workbench.views.KeyTableView;

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
		// While findings are shown anew there are none for a moment.
		Driver.waitFor("errors alone", () -> !hasWarnings() && !bench.markers(PLAN).isEmpty());
		said.put("problems.least", "WARNING");
		Driver.waitFor("warnings again", this::hasWarnings);
	}

	@Test
	void figuresAreShownInTheUnitPreferred() throws Exception {
		bench.open("plans/first.plan");
		KeyTableView table = (KeyTableView) Driver.view(KeyTableView.ID);
		Driver.waitFor("thou", () -> says(table, ". . 1 1 1.5 1 0.5 ."));
		Driver.waitFor("findings in thou", () -> tells("thou too high"));
		said.put("shown.unit", "MILLIMETRE");
		Driver.waitFor("findings in mm", () -> tells("mm too high") && !tells("thou too high"));
		Driver.waitFor("mm", () -> says(table, ". . 0.0254 0.0254 0.0381 0.0254 0.0127 ."));
		said.remove("shown.unit");
		Driver.waitFor("thou again", () -> says(table, ". . 1 1 1.5 1 0.5 ."));
	}

	private boolean tells(String words) {
		return bench.findings(PLAN).stream().anyMatch(finding -> finding.contains(words));
	}

	private static boolean says(KeyTableView view, String readings) {
		return Arrays.stream(view.control().getChildren()).filter(Table.class::isInstance).map(Table.class::cast)
				.flatMap(table -> Arrays.stream(table.getItems())).anyMatch(row -> row.getText(KeyColumn.READINGS.ordinal()).equals(readings));
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
