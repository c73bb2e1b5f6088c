package padwright.engine.coupling;

import java.util.List;

/** Keys that close each other in a circle, so that none can be regulated first. */
public final class CircularCouplingException extends IllegalArgumentException {

	private static final long serialVersionUID = 1L;

	private final List<String> keys;

	CircularCouplingException(List<String> keys) {
		super("keys close each other in a circle: " + String.join(" > ", keys) + " > " + keys.get(0));
		this.keys = keys;
	}

	/** The keys of one circle, each closing the next and the last the first. */
	public List<String> keys() {
		return keys;
	}
}
