package padwright.paper.card;

import padwright.engine.length.Length;

/** Widest less narrowest gap before the pieces, and what is predicted after them. */
public record CardSpread(Length before, Length after) {
}
