package padwright.engine.clock;

/**
 * An arc of the clock, clockwise, less than the whole circle.
 *
 * @param from where it begins
 * @param halfHours how long it is, 1 to 23 half hours
 */
public record Arc(ClockHour from, int halfHours) {

	/** @throws IllegalArgumentException if it is empty, or a whole circle or more */
	public Arc {
		if (halfHours < 1 || halfHours >= ClockHour.STATIONS) {
			throw new IllegalArgumentException("an arc of " + halfHours + " half hours is not 1 to 23");
		}
	}

	/**
	 * The arc clockwise from one position to another.
	 *
	 * @throws IllegalArgumentException if both are the same
	 */
	public static Arc between(ClockHour from, ClockHour to) {
		return new Arc(from, from.halfHoursTo(to));
	}

	/** Where it ends. */
	public ClockHour to() {
		return from.plusHalfHours(halfHours);
	}

	/**
	 * How many quarter hours of the half-hour cell centred on {@code station} are covered: 2 inside, 1 at either end,
	 * else 0. Half of it is the fraction cᵢ of the lift model.
	 */
	public int quarterHoursCoveredAt(int station) {
		int offset = Math.floorMod(station - from.station(), ClockHour.STATIONS);
		int first = offset < halfHours ? 1 : 0;
		int second = offset > 0 && offset <= halfHours ? 1 : 0;
		return first + second;
	}

	@Override
	public String toString() {
		return "from " + from + " to " + to();
	}
}
