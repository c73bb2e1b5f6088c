package padwright.workbench.safe;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;

import org.eclipse.core.resources.IFile;
import org.eclipse.core.runtime.NullProgressMonitor;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import padwright.language.files.SafeFile;
import padwright.workbench.Driver;

/** A file marked as read-only, even for whoever could write it all the same. */
class ProtectionTest {

	@TempDir
	private Path folder;
	private Driver driver;
	private IFile file;
	private Path path;

	@BeforeEach
	void openShop() throws Exception {
		driver = Driver.withExampleShop(folder);
		file = driver.file("plans/first.plan");
		path = driver.path("plans/first.plan");
	}

	@AfterEach
	void closeShop() throws Exception {
		driver.close();
	}

	@Test
	void aFileWithoutTheMarkIsNotAskedAbout() throws Exception {
		assertTrue(Protection.isLifted(path, file, asked -> {
			throw new AssertionError("asked");
		}));
	}

	@Test
	void theMarkStaysUntilTheUserTakesItAway() throws Exception {
		assertTrue(path.toFile().setReadOnly());
		assertFalse(Protection.isLifted(path, file, asked -> false));
		assertTrue(SafeFile.isProtected(path));
		assertTrue(Protection.isLifted(path, file, asked -> true));
		assertFalse(SafeFile.isProtected(path));
	}

	@Test
	void savingAsksFirst() throws Exception {
		var editor = driver.open("plans/first.plan");
		Driver.replace(editor, "with Bench", "with  Bench");
		String old = Files.readString(path);
		assertTrue(path.toFile().setReadOnly());
		Driver.display().asyncExec(() -> editor.doSave(new NullProgressMonitor()));
		Driver.answerDialog("Marked as read-only", "No");
		assertEquals(old, Files.readString(path));
		assertTrue(Driver.ui(editor::isDirty));
		Driver.display().asyncExec(() -> editor.doSave(new NullProgressMonitor()));
		Driver.answerDialog("Marked as read-only", "Yes");
		Driver.waitFor("a saved text", () -> !editor.isDirty());
		assertTrue(Files.readString(path).contains("with  Bench"));
	}
}
