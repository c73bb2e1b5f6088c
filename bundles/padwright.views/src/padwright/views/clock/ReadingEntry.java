package padwright.views.clock;

/**
 * Where the next reading goes and what is typed of it so far.
 *
 * @param cursor which of the hours, from 0; as many as are read where the next is to be read
 * @param typed so far
 * @param refused whether what is typed was tried and cannot be taken: it stays to be seen and mended, and the next
 *     character of a reading begins anew
 */
public record ReadingEntry(int cursor, String typed, boolean refused) {

	/** More than any length in any unit needs, to the nanometre. */
	private static final int LONGEST = 12;
	/** Typed for a light drag, where readings are graded. */
	static final char LIGHT_DRAG = '-';

	public ReadingEntry {
		if (cursor < 0) {
			throw new IllegalArgumentException("there is no hour " + cursor);
		}
	}

	ReadingEntry(int cursor, String typed) {
		this(cursor, typed, false);
	}

	/** At the first hour that is not read; behind the last where all are. */
	static ReadingEntry start(int read) {
		return new ReadingEntry(read, "");
	}

	/** Whether the next character begins a reading. */
	boolean isNew() {
		return typed.isEmpty() || refused;
	}

	/** Whether a character can belong to a reading. */
	public static boolean takes(char character) {
		return character >= '0' && character <= '9' || character == '.' || character == ','
				|| character == LIGHT_DRAG;
	}

	/** Whether nothing more can be typed. */
	boolean isFull() {
		return !refused && typed.length() >= LONGEST;
	}

	ReadingEntry with(char character) {
		return new ReadingEntry(cursor, refused ? String.valueOf(character) : typed + character);
	}

	/** Takes back the last character; where there is none, goes back an hour. */
	ReadingEntry back() {
		return typed.isEmpty() ? up() : new ReadingEntry(cursor, typed.substring(0, typed.length() - 1));
	}

	ReadingEntry up() {
		return new ReadingEntry(Math.max(0, cursor - 1), "");
	}

	/** To the next hour, but not past the first that is not read: behind the last where all are. */
	ReadingEntry down(int read) {
		return new ReadingEntry(Math.min(cursor + 1, read), "");
	}

	/** What is typed cannot be taken. */
	ReadingEntry refuse() {
		return new ReadingEntry(cursor, typed, true);
	}
}
