package padwright.language.merge;

/**
 * A text as each side wants it; the same twice where they agree.
 *
 * @param ours as the first edited copy has it
 * @param theirs as the second has it
 */
record Sides(String ours, String theirs) {

	static final Sides NOTHING = both("");

	static Sides both(String text) {
		return new Sides(text, text);
	}

	boolean agree() {
		return ours.equals(theirs);
	}

	/** Three copies of a text: who left it as it was gives way; so does who only laid it out anew. */
	static Sides of(String base, String ours, String theirs) {
		if (ours.equals(theirs) || base.equals(theirs)) {
			return both(ours);
		}
		if (base.equals(ours)) {
			return both(theirs);
		}
		String words = Part.words(base);
		if (Part.words(theirs).equals(words) || Part.words(theirs).equals(Part.words(ours))) {
			return both(ours);
		}
		return Part.words(ours).equals(words) ? both(theirs) : new Sides(ours, theirs);
	}

	/** This text and the next behind it. */
	Sides then(Sides next) {
		return new Sides(Joint.join(ours, next.ours), Joint.join(theirs, next.theirs));
	}
}
