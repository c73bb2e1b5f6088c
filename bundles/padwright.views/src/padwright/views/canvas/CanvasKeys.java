package padwright.views.canvas;

import java.util.Optional;

import org.eclipse.swt.SWT;
import org.eclipse.swt.events.KeyEvent;
import org.eclipse.swt.events.KeyListener;
import org.eclipse.swt.events.TraverseEvent;

import padwright.views.scenes.Target;

/** What the keyboard does to a drawing. */
final class CanvasKeys {

	private static final double STEP = 1.25;
	private static final int PAN = 40;

	private final SceneCanvas canvas;
	private Optional<String> touched = Optional.empty();

	CanvasKeys(SceneCanvas canvas) {
		this.canvas = canvas;
		canvas.addTraverseListener(this::traverse);
		canvas.addKeyListener(KeyListener.keyPressedAdapter(this::pressed));
	}

	/** Tab walks through the drawing first and leaves it at its end. */
	private void traverse(TraverseEvent event) {
		int step = switch (event.detail) {
		case SWT.TRAVERSE_TAB_NEXT -> 1;
		case SWT.TRAVERSE_TAB_PREVIOUS -> -1;
		default -> 0;
		};
		if (step == 0) {
			event.doit = event.detail == SWT.TRAVERSE_PAGE_NEXT || event.detail == SWT.TRAVERSE_PAGE_PREVIOUS;
			return;
		}
		Optional<Target> next = canvas.isOneStop() ? Optional.empty() : canvas.targets().next(canvas.focus(), step);
		event.doit = next.isEmpty();
		next.ifPresent(canvas::focusOn);
	}

	private void pressed(KeyEvent event) {
		boolean control = (event.stateMask & SWT.MOD1) != 0;
		if (control && zoom(event.character == 0 ? (char) event.keyCode : event.character)
				|| canvas.listener().typed(event)) {
			return;
		}
		switch (event.keyCode) {
		case SWT.ARROW_LEFT -> arrow(-1, 0);
		case SWT.ARROW_RIGHT -> arrow(1, 0);
		case SWT.ARROW_UP -> arrow(0, -1);
		case SWT.ARROW_DOWN -> arrow(0, 1);
		case SWT.CR, SWT.KEYPAD_CR, ' ' -> canvas.focus().ifPresent(id -> touch(id, event));
		case SWT.ESC -> clear();
		default -> zoom(event.character);
		}
	}

	private boolean zoom(char character) {
		switch (character) {
		case '+', '=' -> canvas.zoom(STEP);
		case '-' -> canvas.zoom(1 / STEP);
		case '0' -> canvas.showWhole();
		default -> {
			return false;
		}
		}
		return true;
	}

	private void arrow(int dx, int dy) {
		if (canvas.focus().isEmpty()) {
			canvas.pan(-dx * PAN, -dy * PAN);
		} else {
			canvas.targets().toward(canvas.focus(), dx, dy).ifPresent(canvas::focusOn);
		}
	}

	private void touch(String id, KeyEvent event) {
		boolean again = event.keyCode != ' ' && touched.equals(Optional.of(id));
		touched = Optional.of(id);
		if (again) {
			canvas.listener().opened(id);
		} else {
			canvas.listener().touched(id, (event.stateMask & (SWT.MOD1 | SWT.MOD2)) != 0);
		}
	}

	private void clear() {
		touched = Optional.empty();
		canvas.setFocusOn(Optional.empty());
		canvas.listener().cleared();
	}
}
