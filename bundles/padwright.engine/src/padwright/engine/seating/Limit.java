package padwright.engine.seating;

/** What keeps a chance from being higher. */
public enum Limit {
	/** Nothing does: it is high. */
	NONE,
	/** Finer leaves, or dots and dashes told apart, would help most. */
	COARSE_READINGS,
	/** Another hour read would help most. */
	UNREAD_HOURS,
	/** It is not known well enough how stiff the pad is. */
	STIFFNESS,
	/** It is not known well enough how long the arm is. */
	ARM,
	/** No film that can be cut follows such a rim. */
	FILM
}
