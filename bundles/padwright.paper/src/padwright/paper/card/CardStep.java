package padwright.paper.card;

import padwright.paper.words.Messages;

/** What is ticked off at a key. */
public enum CardStep {

	HEIGHT, LEVEL, REGULATE;

	String word() {
		return Messages.of("card.step." + name());
	}
}
