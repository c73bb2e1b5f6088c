package padwright.views.layout;

import java.util.Locale;

import padwright.views.Messages;

/** What can be drawn in a layout. */
public enum LayoutKind {
	HOLE("H"), KEY("K"), CUP("K"), LEVER("Lever"), TOUCH("T"), ROD("Rod");

	private final String firstName;

	LayoutKind(String firstName) {
		this.firstName = firstName;
	}

	/** What a name of one begins with that was not given one yet. */
	String firstName() {
		return firstName;
	}

	/** What ids of one begin with: keys of all kinds have names of one kind. */
	String group() {
		return switch (this) {
		case HOLE -> "hole";
		case TOUCH -> "touch";
		case ROD -> "rod";
		case KEY, CUP, LEVER -> "key";
		};
	}

	/** As it is called at the bench. */
	public String inWords() {
		return Messages.of("layout.kind." + name().toLowerCase(Locale.ROOT));
	}
}
