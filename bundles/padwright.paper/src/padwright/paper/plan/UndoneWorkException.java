package padwright.paper.plan;

import java.util.List;

import padwright.workup.words.Listed;
import padwright.workup.words.Phrase;

/** A page would promise more than its plan says is done. */
public final class UndoneWorkException extends IllegalArgumentException {

	private static final long serialVersionUID = 1L;

	private final transient List<Phrase> open;

	/** @param open what was begun and is not said as done, a sentence each without a full stop */
	public UndoneWorkException(List<Phrase> open) {
		this.open = List.copyOf(open);
	}

	public List<Phrase> open() {
		return open;
	}

	@Override
	public String getMessage() {
		return new Listed(open, "; ").toString();
	}
}
