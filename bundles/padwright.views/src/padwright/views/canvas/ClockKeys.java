package padwright.views.canvas;

import org.eclipse.swt.SWT;
import org.eclipse.swt.events.KeyEvent;

import padwright.views.clock.ClockSession;

/** The keys of the rim clock that are not figures. */
final class ClockKeys {

	private ClockKeys() {
	}

	/** True if the key did something. */
	static boolean press(ClockSession session, KeyEvent event) {
		return switch (event.keyCode) {
		case SWT.CR, SWT.KEYPAD_CR -> session.typing().enter();
		case SWT.BS -> does(session.typing()::back);
		default -> event.keyCode == SWT.INSERT || event.character == '+' ? does(session::add)
				: session.selected().isPresent() ? piece(session, event) : hour(session, event);
		};
	}

	private static boolean piece(ClockSession session, KeyEvent event) {
		boolean end = (event.stateMask & SWT.MOD2) != 0;
		return switch (event.keyCode) {
		case SWT.ARROW_LEFT -> does(() -> session.shift(end, -1));
		case SWT.ARROW_RIGHT -> does(() -> session.shift(end, 1));
		case SWT.ARROW_UP -> does(() -> session.thicken(1));
		case SWT.ARROW_DOWN -> does(() -> session.thicken(-1));
		case SWT.DEL -> does(session::remove);
		default -> false;
		};
	}

	private static boolean hour(ClockSession session, KeyEvent event) {
		return switch (event.keyCode) {
		case SWT.ARROW_UP -> does(session.typing()::up);
		case SWT.ARROW_DOWN -> does(session.typing()::down);
		default -> false;
		};
	}

	private static boolean does(Runnable action) {
		action.run();
		return true;
	}
}
