package padwright.engine.forecast;

/**
 * Pads found torn at a service.
 *
 * @param torn how many, 0 or more
 * @param years years since the service before, more than 0
 */
public record TornPads(int torn, double years) {

	/** @throws IllegalArgumentException if either is out of range */
	public TornPads {
		if (torn < 0) {
			throw new IllegalArgumentException(torn + " torn pads is below zero");
		}
		if (!(years > 0 && years < Double.POSITIVE_INFINITY)) {
			throw new IllegalArgumentException(years + " years between services is not above zero");
		}
	}
}
