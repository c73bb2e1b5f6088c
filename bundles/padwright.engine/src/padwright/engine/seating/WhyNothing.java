package padwright.engine.seating;

/** Why nothing is to be done now. */
public enum WhyNothing {
	/** It is level already, as sure as the shop wants to be. */
	LEVEL_ENOUGH,
	/** No hour drags: something holds the key off, or it touches between the hours that were read. */
	HELD_OFF,
	/** All hours read drag, and no film would make it likelier that all others do. */
	NO_FILM_HELPS,
	/** There is no film to cut. */
	NO_FILM
}
