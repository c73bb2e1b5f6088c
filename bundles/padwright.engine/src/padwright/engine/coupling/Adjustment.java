package padwright.engine.coupling;

/** What the technician does at an adjuster. */
public sealed interface Adjustment permits ScrewTurn, FilmChange {

	/** In trade words, as in {@code 91° in (3 hours of the clock)} or {@code add 1.5 thou of film}. */
	String inWords();
}
