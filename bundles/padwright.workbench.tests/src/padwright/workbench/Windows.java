package padwright.workbench;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

import org.eclipse.core.commands.ParameterizedCommand;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.commands.ICommandService;
import org.eclipse.ui.handlers.IHandlerService;

import padwright.workbench.controls.Named;

/** Drives dialogs from the thread of a test: their fields by the names that they are read out with. */
final class Windows {

	private final Shell shell;

	private Windows(Shell shell) {
		this.shell = shell;
	}

	/** The dialog that a command opens. */
	static Windows open(String command, String title) throws Exception {
		return open(new ParameterizedCommand(
				PlatformUI.getWorkbench().getService(ICommandService.class).getCommand(command), null), title);
	}

	/** The dialog that a command opens. */
	static Windows open(ParameterizedCommand command, String title) throws Exception {
		Driver.display().asyncExec(() -> {
			try {
				PlatformUI.getWorkbench().getService(IHandlerService.class).executeCommand(command, null);
			} catch (Exception failed) {
				throw new AssertionError(failed);
			}
		});
		Driver.waitFor(title, () -> shell(title).isPresent());
		return new Windows(Driver.ui(() -> shell(title).orElseThrow()));
	}

	/** The main window, for views with fields. */
	static Windows main() throws Exception {
		return new Windows(Driver.ui(() -> Driver.page().getWorkbenchWindow().getShell()));
	}

	/** A field, from any thread. */
	<C extends Control> C field(Class<C> kind, String name) throws Exception {
		return Driver.ui(() -> named(kind, name));
	}

	private static Optional<Shell> shell(String title) {
		return Arrays.stream(Driver.display().getShells()).filter(one -> one.getText().equals(title)).findFirst();
	}

	private static List<Control> within(Composite composite) {
		List<Control> all = new ArrayList<>();
		for (Control child : composite.getChildren()) {
			all.add(child);
			if (child instanceof Composite inner) {
				all.addAll(within(inner));
			}
		}
		return all;
	}

	/** All controls of a kind that are to be seen. */
	<C extends Control> List<C> all(Class<C> kind) {
		return within(shell).stream().filter(kind::isInstance).map(kind::cast).filter(Control::isVisible).toList();
	}

	/** A field; in the UI thread. */
	<C extends Control> C named(Class<C> kind, String name) {
		return all(kind).stream().filter(control -> Named.of(control).equals(name)).findFirst()
				.orElseThrow(() -> new AssertionError(name + " is none of " + all(kind).stream().map(Named::of).toList()));
	}

	void type(String field, String text) throws Exception {
		Driver.ui(() -> {
			Text typed = named(Text.class, field);
			typed.setFocus();
			typed.setText(text);
			return null;
		});
	}

	/** Types into a field and presses Enter. */
	void enter(String field, String text) throws Exception {
		Driver.ui(() -> {
			Text typed = named(Text.class, field);
			typed.setFocus();
			typed.setText(text);
			typed.notifyListeners(SWT.DefaultSelection, new Event());
			return null;
		});
	}

	void choose(String field, String item) throws Exception {
		Driver.waitFor(item, () -> Arrays.asList(named(Combo.class, field).getItems()).contains(item));
		Driver.ui(() -> {
			Combo combo = named(Combo.class, field);
			combo.setText(item);
			combo.notifyListeners(SWT.Selection, new Event());
			return null;
		});
	}

	/** Pushes a button once it can be. */
	void push(String label) throws Exception {
		Driver.waitFor(label, () -> button(label).isEnabled());
		Driver.ui(() -> {
			button(label).notifyListeners(SWT.Selection, new Event());
			return null;
		});
	}

	boolean canPush(String label) throws Exception {
		return Driver.ui(() -> button(label).isEnabled());
	}

	private Button button(String label) {
		return all(Button.class).stream().filter(button -> button.getText().replace("&", "").equals(label)).findFirst()
				.orElseThrow(() -> new AssertionError(label));
	}

	/** Whether something in the dialog says a text. */
	boolean says(String text) throws Exception {
		return Driver.ui(() -> all(Text.class).stream().anyMatch(message -> message.getText().contains(text)));
	}

	void waitForEnd() throws Exception {
		Driver.waitFor("its end", shell::isDisposed);
	}
}
