package padwright.paper.card;

/** Something to know about a key. */
public record CardNote(Weight weight, String text) {

	/** Whether work must wait for it. */
	public enum Weight {
		/** To be put right first. */
		WARNING,
		/** Good to know. */
		REMARK
	}

	/** To be put right before the work goes on. */
	public static CardNote warning(String text) {
		return new CardNote(Weight.WARNING, text);
	}

	/** Good to know. */
	public static CardNote remark(String text) {
		return new CardNote(Weight.REMARK, text);
	}
}
