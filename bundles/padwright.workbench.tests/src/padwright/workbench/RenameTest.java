package padwright.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;

import org.eclipse.ui.texteditor.ITextEditorActionConstants;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import padwright.workbench.editor.PlanEditor;
import padwright.workbench.session.Positions;
import padwright.workbench.session.Renaming;

/** A key renamed in a template: at once in what is open, safely in what is not, and undone in one step. */
class RenameTest {

	private static final String SYSTEM = "systems/boehm.keys";
	private static final String OPEN = "plans/first.plan";
	private static final String CLOSED = "plans/spring-service.plan";

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
	void acrossFilesAndBack() throws Exception {
		PlanEditor plan = driver.open(OPEN);
		PlanEditor system = driver.open(SYSTEM);
		String oldSystem = Driver.text(system);
		String oldPlan = Driver.text(plan);
		String oldClosed = Files.readString(driver.path(CLOSED));
		Driver.waitFor("the rename", () -> rename(system));
		assertTrue(Driver.text(plan).contains("key FSharp "), "the open plan follows");
		assertTrue(Driver.ui(plan::isDirty), "what is open stays unsaved");
		assertTrue(Files.readString(driver.path(CLOSED)).contains("key FSharp "), "what is closed is saved");
		assertEquals(oldClosed, Files.readString(driver.path(CLOSED + ".bak")));
		Driver.waitFor("no broken link", () -> driver.findings(OPEN).stream().noneMatch(found -> found.contains("Fs")));
		undo(system);
		Driver.waitFor("the old name", () -> Driver.document(system).get().equals(oldSystem));
		assertEquals(oldPlan, Driver.text(plan));
		assertEquals(oldClosed, Files.readString(driver.path(CLOSED)));
	}

	private static boolean rename(PlanEditor system) {
		int key = Driver.document(system).get().indexOf("key Fs ") + "key ".length();
		return Renaming.rename(Driver.document(system), Positions.position(Driver.document(system), key), "Fs",
				"FSharp");
	}

	/** The window asks first, since files beside the one in the editor change too. */
	private static void undo(PlanEditor editor) throws Exception {
		Driver.display().asyncExec(() -> editor.getAction(ITextEditorActionConstants.UNDO).run());
		Driver.answerDialog();
	}

	/** Neighbours count as they are on the screen, not as they are on disk. */
	@Test
	void anUnsavedNeighbourShowsAtOnce() throws Exception {
		PlanEditor plan = driver.open(OPEN);
		PlanEditor system = driver.open(SYSTEM);
		Driver.replace(system, "key Fs ", "key Fx ");
		Driver.waitFor("a broken link", () -> driver.findings(OPEN).stream().anyMatch(found -> found.contains("Fs")));
		Driver.replace(plan, "key Fs ", "key Fx ");
		Driver.waitFor("only the other use is broken", () -> driver.findings(OPEN).stream()
				.filter(found -> found.contains("Fs")).count() == 1);
	}
}
