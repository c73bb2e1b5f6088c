package padwright.engine.mechanism;

/**
 * A link by the numbers of its keys.
 *
 * @param number its own
 * @param condition the key on which it depends, or {@link Guess#NOTHING}
 * @param whenMoved whether that key must be away from its rest; else it must be at rest
 * @param isLeaving whether it moves the driven key away from its rest; else it brings it back
 * @param isHolding whether it is stronger than whatever opens
 */
record NumberedLink(int number, int driver, int driven, int condition, boolean whenMoved, boolean isLeaving,
		boolean isHolding) {
}
