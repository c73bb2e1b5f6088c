package padwright.workbench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.atomic.AtomicReference;
import java.util.concurrent.locks.LockSupport;
import java.util.function.BooleanSupplier;
import java.util.stream.Stream;

import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IFolder;
import org.eclipse.core.resources.IMarker;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.jface.text.IDocument;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.IViewPart;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.handlers.IHandlerService;

import padwright.workbench.editor.Places;
import padwright.workbench.editor.PlanEditor;
import padwright.workbench.session.Finding;
import padwright.workbench.session.LanguageSession;
import padwright.workbench.session.OpenShops;

/** Drives the workbench from the thread of a test, as a technician would: with a shop of its own, open in the window. */
public final class Driver implements AutoCloseable {

	/** Far longer than anything takes, so that only what never happens fails. */
	private static final Duration PATIENCE = Duration.ofSeconds(60);
	private static final long GLANCE_NANOS = Duration.ofMillis(10).toNanos();
	private static final Path EXAMPLE = Path.of("../../examples/shop");

	private final IFolder shop;

	private Driver(IFolder shop) {
		this.shop = shop;
	}

	/** With a copy of the example shop in {@code folder}. */
	public static Driver withExampleShop(Path folder) throws Exception {
		copyExampleShop(folder);
		return over(folder);
	}

	/** With a copy of the example year in {@code folder}. */
	static Driver withExampleYear(Path folder) throws Exception {
		copy(EXAMPLE.resolveSibling("year"), folder.resolve("shop"));
		return over(folder);
	}

	static void copyExampleShop(Path folder) throws IOException {
		copy(EXAMPLE, folder.resolve("shop"));
	}

	/** With the shop that is in {@code folder} already. */
	static Driver over(Path folder) throws Exception {
		IFolder shop = OpenShops.open(folder.resolve("shop"), null);
		waitFor("the server", () -> LanguageSession.get().running().isPresent());
		return new Driver(shop);
	}

	private static void copy(Path from, Path to) throws IOException {
		try (Stream<Path> all = Files.walk(from)) {
			for (Path path : (Iterable<Path>) all::iterator) {
				Files.copy(path, to.resolve(from.relativize(path).toString()));
			}
		}
	}

	/** Does something in the UI thread. */
	public static <T> T ui(Callable<T> work) throws Exception {
		AtomicReference<T> result = new AtomicReference<>();
		AtomicReference<Throwable> failure = new AtomicReference<>();
		display().syncExec(() -> {
			try {
				result.set(work.call());
			} catch (Exception | Error failed) {
				failure.set(failed);
			}
		});
		if (failure.get() instanceof Error error) {
			throw error;
		}
		if (failure.get() instanceof Exception exception) {
			throw exception;
		}
		return result.get();
	}

	public static Display display() {
		return PlatformUI.getWorkbench().getDisplay();
	}

	/** Waits until something is so, looked at in the UI thread. */
	public static void waitFor(String what, BooleanSupplier so) throws Exception {
		long end = System.nanoTime() + PATIENCE.toNanos();
		while (!ui(so::getAsBoolean)) {
			if (System.nanoTime() > end) {
				throw new AssertionError("never seen: " + what);
			}
			LockSupport.parkNanos(GLANCE_NANOS);
		}
	}

	static IWorkbenchPage page() {
		return PlatformUI.getWorkbench().getWorkbenchWindows()[0].getActivePage();
	}

	public IFile file(String path) {
		return shop.getFile(path);
	}

	public Path path(String path) {
		return file(path).getLocation().toPath();
	}

	public PlanEditor open(String path) throws Exception {
		return ui(() -> (PlanEditor) Places.editor(file(path)).orElseThrow());
	}

	static IDocument document(PlanEditor editor) {
		return editor.getDocumentProvider().getDocument(editor.getEditorInput());
	}

	/** Replaces the first {@code old} in an open text, as typing would. */
	public static void replace(PlanEditor editor, String old, String anew) throws Exception {
		ui(() -> {
			IDocument document = document(editor);
			int offset = document.get().indexOf(old);
			document.replace(offset, old.length(), anew);
			editor.selectAndReveal(offset + anew.length(), 0);
			return null;
		});
	}

	static String text(PlanEditor editor) throws Exception {
		return ui(() -> document(editor).get());
	}

	/** The messages of the findings in a file. */
	List<String> findings(String path) {
		return markers(path).stream().map(marker -> marker.getAttribute(IMarker.MESSAGE, "")).toList();
	}

	List<IMarker> markers(String path) {
		try {
			return Arrays.asList(file(path).findMarkers(Finding.MARKER, true, IResource.DEPTH_ZERO));
		} catch (CoreException gone) {
			return List.of();
		}
	}

	static IViewPart view(String id) throws Exception {
		return ui(() -> page().showView(id));
	}

	/** Types into a control: each character, then Enter, as a digital indicator does. */
	static void typeLine(Control control, String characters) throws Exception {
		ui(() -> {
			for (char character : characters.toCharArray()) {
				press(control, character, character);
			}
			press(control, SWT.CR, SWT.CR);
			return null;
		});
	}

	private static void press(Control control, char character, int code) {
		Event key = new Event();
		key.character = character;
		key.keyCode = code;
		control.notifyListeners(SWT.KeyDown, key);
	}

	/** Presses the button with this text, somewhere in a composite. */
	static void pressButton(Composite within, String text) throws Exception {
		ui(() -> {
			Button button = buttons(within).filter(one -> one.getText().replace("&", "").equals(text)).findFirst()
					.orElseThrow();
			button.notifyListeners(SWT.Selection, new Event());
			return null;
		});
	}

	/** Presses the default button of the dialog that opens. */
	public static void answerDialog() throws Exception {
		waitFor("a dialog", () -> dialog().isPresent());
		ui(() -> {
			dialog().orElseThrow().getDefaultButton().notifyListeners(SWT.Selection, new Event());
			return null;
		});
	}

	/** Presses a button of the dialog with a title, once that is open, and waits until it is gone. */
	public static void answerDialog(String title, String button) throws Exception {
		waitFor(title, () -> dialog(title).isPresent());
		Shell dialog = ui(() -> dialog(title).orElseThrow());
		pressButton(dialog, button);
		waitFor("the end of " + title, dialog::isDisposed);
	}

	private static Optional<Shell> dialog(String title) {
		return Arrays.stream(display().getShells())
				.filter(shell -> shell.isVisible() && shell.getText().equals(title)).findFirst();
	}

	private static Optional<Shell> dialog() {
		return Arrays.stream(display().getShells())
				.filter(shell -> shell.isVisible() && shell.getParent() != null && shell.getDefaultButton() != null)
				.findFirst();
	}

	static boolean isEnabled(Composite within, String text) {
		return buttons(within).anyMatch(one -> one.getText().replace("&", "").equals(text) && one.isEnabled());
	}

	private static Stream<Button> buttons(Composite within) {
		return Arrays.stream(within.getChildren()).flatMap(child -> child instanceof Button button ? Stream.of(button)
				: child instanceof Composite inner ? buttons(inner) : Stream.empty());
	}

	/** Carries out a command of the active editor, as its key does. */
	static void command(String id) throws Exception {
		ui(() -> PlatformUI.getWorkbench().getService(IHandlerService.class)
				.executeCommand(id, null));
	}

	/** Closes the editors without saving and takes the shop away. */
	@Override
	public void close() throws Exception {
		ui(() -> {
			page().closeAllEditors(false);
			OpenShops.close(shop, null);
			return null;
		});
	}
}
