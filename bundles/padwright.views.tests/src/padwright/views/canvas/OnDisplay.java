package padwright.views.canvas;

import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.Consumer;

import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.FillLayout;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Shell;

/**
 * Runs something in a window on the display that the build provides, always in the one thread that the display belongs to:
 * each test has a thread of its own, so that one that hangs can be given up.
 */
public final class OnDisplay {

	private static final ExecutorService THREAD = Executors.newSingleThreadExecutor(work -> {
		Thread thread = new Thread(work, "display");
		thread.setDaemon(true);
		return thread;
	});

	private OnDisplay() {
	}

	/** In a window of 640 by 480 points, gone afterwards. The display stays: GTK bears only one for each process. */
	public static void run(Consumer<Shell> use) {
		try {
			THREAD.submit(() -> runHere(use)).get();
		} catch (InterruptedException stopped) {
			throw new AssertionError("stopped while the window was open", stopped);
		} catch (ExecutionException failed) {
			throw new AssertionError(failed.getCause().getMessage(), failed.getCause());
		}
	}

	private static void runHere(Consumer<Shell> use) {
		Display display = Display.getCurrent() == null ? new Display() : Display.getCurrent();
		Shell shell = new Shell(display);
		try {
			shell.setLayout(new FillLayout());
			shell.setSize(640, 480);
			use.accept(shell);
		} finally {
			shell.dispose();
			settle(display);
		}
	}

	/** Opens the window and lets it lay out and paint. */
	public static void open(Shell shell) {
		shell.open();
		shell.layout(true, true);
		settle(shell.getDisplay());
	}

	private static void settle(Display display) {
		while (display.readAndDispatch()) {
			// Until all events are done.
		}
	}

	/** A key as if it was pressed in a control. */
	public static void press(Control control, int keyCode, char character, int stateMask) {
		Event event = new Event();
		event.keyCode = keyCode;
		event.character = character;
		event.stateMask = stateMask;
		control.notifyListeners(SWT.KeyDown, event);
	}

	public static void type(Control control, String text) {
		text.chars().forEach(character -> press(control, character, (char) character, 0));
		press(control, SWT.CR, '\r', 0);
	}
}
