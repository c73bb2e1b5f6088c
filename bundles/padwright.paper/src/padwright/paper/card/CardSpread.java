package padwright.paper.card;

import java.util.Optional;

import padwright.engine.length.Length;

/**
 * Widest less narrowest gap.
 *
 * @param before with what is in the cup now
 * @param after predicted with the pieces placed; empty if the key could not be solved
 */
public record CardSpread(Length before, Optional<Length> after) {

	/** Of a key that was solved. */
	public static CardSpread solved(Length before, Length after) {
		return new CardSpread(before, Optional.of(after));
	}
}
