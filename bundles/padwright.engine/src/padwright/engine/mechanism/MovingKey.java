package padwright.engine.mechanism;

/**
 * What turns together on one rod: a key with cups, or a lever without any. It has two states, that of rest and the
 * other one, into which a finger or another key brings it.
 *
 * @param name unlike that of any other key
 * @param rest its state when nothing moves it; of no account for a lever
 */
public record MovingKey(String name, Rest rest) {

	/** @throws IllegalArgumentException if the name is blank */
	public MovingKey {
		if (name.isBlank()) {
			throw new IllegalArgumentException("a key needs a name");
		}
	}
}
