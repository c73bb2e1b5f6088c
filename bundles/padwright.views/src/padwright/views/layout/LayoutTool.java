package padwright.views.layout;

import java.util.Locale;
import java.util.Optional;

import padwright.views.Messages;

/** What the mouse does in a layout. */
public enum LayoutTool {
	/** Chooses and drags. */
	CHOOSE('v'),
	HOLE('h'), KEY('k'), CUP('u'), LEVER('e'), TOUCH('t'), ROD('r'),
	/** Draws from a touch or key to what it moves. */
	LINK('c');

	private final char shortcut;

	LayoutTool(char shortcut) {
		this.shortcut = shortcut;
	}

	/** The key that takes it. */
	public char shortcut() {
		return shortcut;
	}

	/** What it places; nothing for one that places nothing. */
	public Optional<LayoutKind> places() {
		return this == CHOOSE || this == LINK ? Optional.empty() : Optional.of(LayoutKind.valueOf(name()));
	}

	public String inWords() {
		return Messages.of("layout.tool." + name().toLowerCase(Locale.ROOT));
	}

	/** The tool of a key; nothing for other keys. */
	public static Optional<LayoutTool> of(char key) {
		for (LayoutTool tool : values()) {
			if (tool.shortcut == Character.toLowerCase(key)) {
				return Optional.of(tool);
			}
		}
		return Optional.empty();
	}
}
