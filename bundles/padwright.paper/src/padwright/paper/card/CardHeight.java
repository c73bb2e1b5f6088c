package padwright.paper.card;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

import padwright.engine.length.Length;
import padwright.paper.words.Messages;
import padwright.workup.words.LengthWords;

/**
 * The full shims of a key.
 *
 * @param target what they should sum to, if known
 * @param shims in stacking order, from the cup; none if the pad goes in without
 * @param tolerance how far pad and disc may be off, in words; empty if not known
 */
public record CardHeight(Optional<Length> target, List<Length> shims, String tolerance) {

	public CardHeight {
		shims = List.copyOf(shims);
	}

	/** What they sum to; exact. */
	public Length sum() {
		return shims.stream().reduce(Length.ZERO, Length::plus);
	}

	/** Sum less target, if there is one; exact. */
	public Optional<Length> error() {
		return target.map(sum()::minus);
	}

	/** As in {@code 7.5 + 5 + 2 = 14.5}; a lone shim needs no sum. */
	public String words() {
		if (shims.isEmpty()) {
			return Messages.of("none");
		}
		String terms = shims.stream().map(LengthWords::figure).collect(Collectors.joining(" + "));
		return shims.size() == 1 ? terms : terms + " = " + LengthWords.figure(sum());
	}
}
