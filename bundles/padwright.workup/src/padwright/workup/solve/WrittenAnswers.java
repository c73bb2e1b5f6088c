package padwright.workup.solve;

/** What becomes of answers that a plan holds already when it is solved again. */
public enum WrittenAnswers {
	/** They stay, and keep the film they have taken. */
	KEEP,
	/** The new answers take their place, and may use their film. */
	REPLACE
}
