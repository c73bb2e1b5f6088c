package padwright.views.canvas;

import java.util.Map;
import java.util.Optional;

import org.eclipse.swt.SWT;
import org.eclipse.swt.events.KeyEvent;

/** What a key is called: the character that it writes, capital or not, or its name. */
final class KeyNames {

	private static final Map<Integer, String> NAMES = Map.ofEntries(Map.entry((int) SWT.CR, "Enter"),
			Map.entry((int) SWT.LF, "Enter"), Map.entry(SWT.KEYPAD_CR, "Enter"), Map.entry((int) SWT.BS, "Backspace"),
			Map.entry((int) ' ', "Space"), Map.entry((int) SWT.TAB, "Tab"), Map.entry(SWT.INSERT, "Insert"),
			Map.entry((int) SWT.DEL, "Delete"), Map.entry(SWT.HOME, "Home"), Map.entry(SWT.END, "End"),
			Map.entry(SWT.PAGE_UP, "PageUp"), Map.entry(SWT.PAGE_DOWN, "PageDown"),
			Map.entry(SWT.ARROW_UP, "ArrowUp"), Map.entry(SWT.ARROW_DOWN, "ArrowDown"),
			Map.entry(SWT.ARROW_LEFT, "ArrowLeft"), Map.entry(SWT.ARROW_RIGHT, "ArrowRight"));

	private KeyNames() {
	}

	/** Nothing for keys that only change what others mean. */
	static Optional<String> of(KeyEvent event) {
		if (NAMES.containsKey(event.keyCode)) {
			return Optional.of(NAMES.get(event.keyCode));
		}
		if (event.keyCode >= SWT.F1 && event.keyCode <= SWT.F20) {
			return Optional.of("F" + (event.keyCode - SWT.F1 + 1));
		}
		return event.character > ' ' ? Optional.of(String.valueOf(Character.toLowerCase(event.character))) : Optional.empty();
	}
}
