package padwright.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import padwright.workbench.bench.Bench;
import padwright.workbench.editor.PlanEditor;
import padwright.workbench.views.KeyTableView;

/** The theme changes under an open window. */
class ThemeTest {

	@TempDir
	private Path folder;
	private Driver driver;
	private PlanEditor editor;

	@BeforeEach
	void openPlan() throws Exception {
		driver = Driver.withExampleShop(folder);
		editor = driver.open("plans/first.plan");
		Driver.ui(() -> {
			window().setBounds(0, 0, 1280, 720);
			return null;
		});
		Driver.view(KeyTableView.ID);
		Driver.waitFor("the plan on the bench",
				() -> Bench.of(Driver.page().getWorkbenchWindow()).shown().plan().isPresent());
		ScreensTest.settle();
	}

	@AfterEach
	void closeShop() throws Exception {
		driver.close();
	}

	private static Shell window() {
		return Driver.page().getWorkbenchWindow().getShell();
	}

	private static Map<Control, List<RGB>> colours() throws Exception {
		return Driver.ui(() -> {
			Map<Control, List<RGB>> all = new LinkedHashMap<>();
			collect(window(), all);
			return all;
		});
	}

	private static void collect(Control control, Map<Control, List<RGB>> all) {
		List<RGB> own = new ArrayList<>(List.of(control.getBackground().getRGB(), control.getForeground().getRGB()));
		if (control instanceof Table table) {
			own.add(table.getHeaderBackground().getRGB());
		}
		all.put(control, own);
		if (control instanceof Composite composite) {
			for (Control child : composite.getChildren()) {
				collect(child, all);
			}
		}
	}

	private static void change() throws Exception {
		Driver.command("padwright.workbench.darkTheme");
		ScreensTest.settle();
	}

	@Test
	void darkAndBackWithoutAStartAndWithoutATrace() throws Exception {
		Map<Control, List<RGB>> before = colours();
		change();
		ScreensTest.picture(Driver.ui(ThemeTest::window), "theme-dark-at-once");
		Map<Control, List<RGB>> dark = colours();
		Control text = Driver.ui(() -> editor.getAdapter(Control.class));
		assertNotEquals(before.get(text), dark.get(text));
		change();
		ScreensTest.picture(Driver.ui(ThemeTest::window), "theme-light-again");
		Map<Control, List<RGB>> after = colours();
		List<String> left = new ArrayList<>();
		before.forEach((control, colours) -> {
			if (after.containsKey(control) && !after.get(control).equals(colours)) {
				left.add(control + " " + colours + " became " + after.get(control));
			}
		});
		assertEquals(List.of(), left);
	}
}
