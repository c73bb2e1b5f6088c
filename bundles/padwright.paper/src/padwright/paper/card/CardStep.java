package padwright.paper.card;

/** What is ticked off at a key. */
public enum CardStep {

	HEIGHT("height"), LEVEL("level"), REGULATE("regulate");

	private final String word;

	CardStep(String word) {
		this.word = word;
	}

	String word() {
		return word;
	}
}
