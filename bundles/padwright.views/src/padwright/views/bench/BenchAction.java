package padwright.views.bench;

/** What a key, a foot switch or a touch can do in bench mode, besides the digits. */
public enum BenchAction {

	/** The finest leaf drags at this hour. */
	DRAGS(". ,"),
	/** It drags lightly, where readings are graded. */
	DRAGS_LIGHTLY("-"),
	/** It drags at all hours that are still to be read. */
	ALL_DRAG("*"),
	/** Ends a figure; where none is typed, does the step that is offered. */
	ENTER("Enter"),
	/** Back a character, an hour or, at the first hour, a key. */
	BACK("Backspace ArrowUp"),
	/** To the hour after, where that is read. */
	FORWARD("ArrowDown"),
	/** To the next key in the order of work. */
	NEXT("+ PageDown ArrowRight"),
	/** To the key before. */
	PREVIOUS("/ PageUp ArrowLeft"),
	/** What the answer says is done. */
	PLACED("p"),
	/** The last piece of an earlier round is taken out. */
	OUT("o"),
	/** All hours are to be felt again. */
	AGAIN("a"),
	/** The clock of the job stands still, or goes on. */
	PAUSE("Space"),
	/** Says once more where the work is. */
	SAY("s");

	private final String firstKeys;

	BenchAction(String firstKeys) {
		this.firstKeys = firstKeys;
	}

	/** The names of its keys, apart by blanks, before the user chooses others. */
	public String firstKeys() {
		return firstKeys;
	}
}
