package padwright.engine.levelling;

import padwright.engine.length.Length;

/**
 * How much is known about an answer.
 *
 * @param optimal whether no other choice is better
 * @param bound the spread of the best answer is at least this; the spread found itself if that is optimal
 */
public record Proof(boolean optimal, Length bound) {

	static Proof optimal(Length spread) {
		return new Proof(true, spread);
	}

	static Proof bestFound(Length bound) {
		return new Proof(false, bound);
	}

	@Override
	public String toString() {
		return optimal ? "optimal" : "best found, the true optimum is at least " + bound;
	}
}
