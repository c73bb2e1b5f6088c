package padwright.engine.coupling;

/** What the technician does at an adjuster. */
public sealed interface Adjustment permits ScrewTurn, FilmChange {

	/** In trade words, as in {@code about a quarter turn in} or {@code add 1.5 thou of film}. */
	String inWords();
}
