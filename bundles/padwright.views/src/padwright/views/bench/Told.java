package padwright.views.bench;

/**
 * What is told to ears.
 *
 * @param words for a voice
 * @param tone where there is none
 */
public record Told(String words, Tone tone) {

	/** Kinds of what is told, to be told apart by their pitch. */
	public enum Tone {
		/** A leaf drags. */
		DRAGS,
		/** A leaf slides. */
		SLIDES,
		/** A key is done, or another is shown. */
		DONE,
		/** What was typed says nothing here. */
		WRONG
	}
}
