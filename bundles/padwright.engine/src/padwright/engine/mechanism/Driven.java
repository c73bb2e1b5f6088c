package padwright.engine.mechanism;

/**
 * A key acts on another.
 *
 * @param link which on which
 */
public record Driven(KeyLink link) implements Cause {

	@Override
	public String key() {
		return link.driven();
	}

	@Override
	public String toString() {
		return link.toString();
	}
}
