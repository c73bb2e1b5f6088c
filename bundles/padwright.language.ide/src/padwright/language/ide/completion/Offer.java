package padwright.language.ide.completion;

/**
 * Something to write at a place.
 *
 * @param text what is written
 * @param detail a few words beside it in the list, or null
 * @param documentation more about it, or null
 */
record Offer(String text, String detail, String documentation) {

	static Offer of(String text, String detail) {
		return new Offer(text, detail, null);
	}
}
