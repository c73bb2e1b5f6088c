package padwright.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

import org.eclipse.core.resources.IFolder;
import org.eclipse.core.resources.IResource;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Link;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IViewPart;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import padwright.workbench.session.OpenShops;
import padwright.workbench.shops.ExampleShop;
import padwright.workbench.tour.TourView;

/** From an empty window to the example shop and through the tour. */
class FirstStartTest {

	private static final Path EXAMPLE = Path.of("../../examples/shop");

	@TempDir
	private Path folder;

	@AfterEach
	void closeAll() throws Exception {
		Driver.ui(() -> {
			Driver.page().closeAllEditors(false);
			for (IResource shop : OpenShops.project().members()) {
				if (shop instanceof IFolder open && open.isLinked()) {
					OpenShops.close(open, null);
				}
			}
			IViewPart tour = Driver.page().findView(TourView.ID);
			if (tour != null) {
				Driver.page().hideView(tour);
			}
			return null;
		});
	}

	private Path openExample() throws Exception {
		Path copy = folder.resolve("copy");
		ExampleShop.open(copy);
		Driver.waitFor("its first plan", () -> editor() != null && editor().getTitle().equals("spring-service.plan"));
		return copy;
	}

	private static IEditorPart editor() {
		return Driver.page().getActiveEditor();
	}

	private static List<Path> files(Path folder) throws Exception {
		try (Stream<Path> all = Files.walk(folder)) {
			return all.filter(Files::isRegularFile).map(folder::relativize)
					.filter(path -> !path.toString().endsWith(".bak")).sorted().toList();
		}
	}

	@Test
	void theExampleShopIsCopiedAndOpenedAtItsFirstPlan() throws Exception {
		Path copy = openExample();
		assertEquals(files(EXAMPLE), files(copy));
		for (Path file : files(copy)) {
			assertEquals(-1, Files.mismatch(EXAMPLE.resolve(file), copy.resolve(file)), file.toString());
		}
	}

	@Test
	void whatWasTriedInTheExampleIsKept() throws Exception {
		Path copy = openExample();
		Files.writeString(copy.resolve("plans/first.plan"), "// tried\n");
		closeAll();
		openExample();
		assertEquals("// tried\n", Files.readString(copy.resolve("plans/first.plan")));
	}

	@Test
	void aFolderWithSomethingElseIsLeftAlone() throws Exception {
		Path letter = Files.writeString(folder.resolve("letter.txt"), "a letter");
		assertThrows(IOException.class, () -> ExampleShop.copyTo(folder));
		assertEquals(List.of(folder.relativize(letter)), files(folder));
	}

	@Test
	void theTourBringsEachViewToTheFront() throws Exception {
		openExample();
		Driver.waitFor("the tour", () -> Driver.page().findView(TourView.ID) != null);
		TourView tour = (TourView) Driver.ui(() -> Driver.page().findView(TourView.ID));
		for (String view : List.of("padwright.workbench.keyMap", "padwright.workbench.rimClock",
				"padwright.workbench.cupSection")) {
			Driver.ui(() -> {
				tour.next();
				return null;
			});
			assertTrue(Driver.ui(() -> Driver.page().isPartVisible(Driver.page().findView(view))), view);
		}
	}

	@Test
	void theShopsViewSaysWhatToBeginWithUntilAShopIsOpen() throws Exception {
		Driver.view("padwright.workbench.shops");
		Driver.waitFor("what to begin with", () -> isVisible(Link.class));
		assertFalse(Driver.ui(() -> isVisible(Tree.class)));
		openExample();
		Driver.waitFor("the shop", () -> isVisible(Tree.class));
	}

	private static boolean isVisible(Class<? extends Control> kind) {
		return isVisible(kind, Driver.page().getWorkbenchWindow().getShell(), false);
	}

	private static boolean isVisible(Class<? extends Control> kind, Composite parent, boolean inShops) {
		return Stream.of(parent.getChildren()).anyMatch(child -> inShops && kind.isInstance(child) && child.isVisible()
				|| child instanceof Composite inner
						&& isVisible(kind, inner, inShops || inner.getClass().getSimpleName().equals("ShopsOrStart")));
	}
}
