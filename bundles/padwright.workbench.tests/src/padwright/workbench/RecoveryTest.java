package padwright.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.nio.file.Files;
import java.nio.file.Path;

import org.eclipse.core.runtime.preferences.InstanceScope;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import padwright.workbench.editor.PlanEditor;
import padwright.workbench.prefs.Preferences;
import padwright.workbench.recovery.Autosave;

/** What is typed but not saved survives the end of the program. */
class RecoveryTest {

	private static final String PLAN = "plans/first.plan";

	@TempDir
	private Path folder;
	private Driver driver;
	private Autosave autosave;

	@BeforeEach
	void openShop() throws Exception {
		InstanceScope.INSTANCE.getNode("padwright.workbench").putInt(Preferences.AUTOSAVE, 1);
		autosave = new Autosave();
		autosave.start();
		driver = Driver.withExampleShop(folder);
	}

	@AfterEach
	void closeShop() throws Exception {
		driver.close();
		autosave.stop();
		InstanceScope.INSTANCE.getNode("padwright.workbench").remove(Preferences.AUTOSAVE);
	}

	private Path sidecar() {
		return driver.path("plans").resolve(".first.plan.unsaved");
	}

	/** As after a kill: nobody was asked, and the unsaved text still lies beside the file. */
	private String leftBehind() throws Exception {
		PlanEditor editor = driver.open(PLAN);
		Driver.replace(editor, "0.5 thou", "0.75 thou");
		String typed = Driver.text(editor);
		Driver.waitFor("the unsaved text", () -> Files.exists(sidecar()));
		Path kept = folder.resolve("kept");
		Files.copy(sidecar(), kept);
		closeWithoutSaving(editor);
		assertFalse(Files.exists(sidecar()), "closed in order, nothing stays behind");
		Files.copy(kept, sidecar());
		return typed;
	}

	private static void closeWithoutSaving(PlanEditor editor) throws Exception {
		Driver.ui(() -> Driver.page().closeEditor(editor, false));
	}

	private static Composite whole(PlanEditor editor) throws Exception {
		return Driver.ui(() -> editor.getAdapter(Control.class).getShell());
	}

	@Test
	void broughtBack() throws Exception {
		String typed = leftBehind();
		PlanEditor editor = driver.open(PLAN);
		Driver.pressButton(whole(editor), "Bring back");
		assertEquals(typed, Driver.text(editor));
		Driver.waitFor("unsaved again", editor::isDirty);
		closeWithoutSaving(editor);
		assertFalse(Files.exists(sidecar()));
	}

	@Test
	void thrownAway() throws Exception {
		leftBehind();
		PlanEditor editor = driver.open(PLAN);
		String saved = Files.readString(driver.path(PLAN));
		Driver.pressButton(whole(editor), "Throw away");
		assertEquals(saved, Driver.text(editor));
		assertFalse(Files.exists(sidecar()));
	}
}
