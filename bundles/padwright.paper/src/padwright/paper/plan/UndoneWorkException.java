package padwright.paper.plan;

import java.util.List;

/** A page would promise more than its plan says is done. */
public final class UndoneWorkException extends IllegalArgumentException {

	private static final long serialVersionUID = 1L;

	private final List<String> open;

	/** @param open what was begun and is not said as done, a sentence each without a full stop */
	public UndoneWorkException(List<String> open) {
		super(String.join("; ", open));
		this.open = List.copyOf(open);
	}

	public List<String> open() {
		return open;
	}
}
