package padwright.views.canvas;

import java.util.Optional;

import org.eclipse.swt.SWT;
import org.eclipse.swt.events.KeyEvent;

import padwright.views.layout.LayoutEditing;
import padwright.views.layout.LayoutKind;
import padwright.views.layout.LayoutTool;

/** What the keyboard does in a layout. */
record LayoutKeys(LayoutControl control) {

	/** By how many steps an arrow moves with Shift. */
	private static final int FAR = 10;
	private static final char AS_INHERITED = 'i';

	/**
	 * Does what a key stands for.
	 *
	 * @return whether it stands for something
	 */
	boolean typed(KeyEvent key) {
		boolean isControl = (key.stateMask & SWT.MOD1) != 0;
		int steps = (key.stateMask & SWT.MOD2) != 0 ? FAR : 1;
		return isControl ? nudge(key.keyCode, steps) : plain(key);
	}

	private boolean nudge(int code, int steps) {
		LayoutEditing editing = control.editing();
		switch (code) {
		case SWT.ARROW_LEFT -> editing.nudge(-steps, 0);
		case SWT.ARROW_RIGHT -> editing.nudge(steps, 0);
		case SWT.ARROW_UP -> editing.nudge(0, -steps);
		case SWT.ARROW_DOWN -> editing.nudge(0, steps);
		default -> {
			return false;
		}
		}
		return true;
	}

	private boolean plain(KeyEvent key) {
		switch (key.keyCode) {
		case SWT.DEL -> control.editing().delete();
		case SWT.F2 -> control.rename();
		case SWT.CR, SWT.KEYPAD_CR -> {
			return placed();
		}
		default -> {
			return (key.stateMask & SWT.MODIFIER_MASK & ~SWT.MOD2) == 0 && letter(Character.toLowerCase(key.character));
		}
		}
		return true;
	}

	private boolean letter(char letter) {
		boolean isTakenBack = letter == AS_INHERITED && control.editing().canBeAsInherited();
		if (isTakenBack) {
			control.editing().asInherited();
		}
		Optional<LayoutTool> tool = LayoutTool.of(letter);
		tool.ifPresent(control::take);
		return isTakenBack || tool.isPresent();
	}

	private boolean placed() {
		Optional<LayoutKind> kind = control.editing().tool().places();
		kind.ifPresent(placed -> {
			control.editing().add(placed);
			control.take(LayoutTool.CHOOSE);
		});
		return kind.isPresent();
	}
}
