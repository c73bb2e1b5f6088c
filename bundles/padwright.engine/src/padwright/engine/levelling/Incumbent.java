package padwright.engine.levelling;

import java.util.Arrays;

/**
 * The best choice of pieces so far, and the rule by which choices of equally many pieces are told apart: spread, then
 * mean lift, then film area, then canonical order.
 */
final class Incumbent {

	private final CandidatePieces candidates;
	private final int[] blanks;
	private int[] pieces = {};
	private int spread;
	private int window;

	/**
	 * @param blanks how many pieces may be cut of each thickness
	 * @param spread with no piece
	 */
	Incumbent(CandidatePieces candidates, int[] blanks, int spread) {
		this.candidates = candidates;
		this.blanks = blanks;
		this.spread = spread;
	}

	/** From now on choices have one piece more, and are better only if their spread is smaller. */
	void beginLevel() {
		window = spread - 1;
	}

	/** The spread that a choice must keep to be as good as the best; the more pieces need a smaller one. */
	int window() {
		return window;
	}

	int spread() {
		return spread;
	}

	/** Numbers of the best pieces, in canonical order. */
	int[] pieces() {
		return pieces;
	}

	/** Takes a choice with that spread if it is the best; {@code choice} is copied. */
	void offer(int choiceSpread, int[] choice) {
		if (choiceSpread > window || !inStock(choice)) {
			return;
		}
		int[] sorted = choice.clone();
		Arrays.sort(sorted);
		if (choiceSpread < spread || precedes(sorted, pieces)) {
			pieces = sorted;
			spread = choiceSpread;
			window = choiceSpread;
		}
	}

	/** Mean lift of a choice in nm: Σ thickness × hours / 12, rounded half up. */
	long meanLift(int[] choice) {
		long sum = 0;
		for (int id : choice) {
			sum += 2 * candidates.thickness(id) * candidates.hours(id);
		}
		return Math.floorDiv(sum + CandidatePieces.STATIONS / 2, CandidatePieces.STATIONS);
	}

	private boolean precedes(int[] one, int[] other) {
		int order = Long.compare(meanLift(one), meanLift(other));
		if (order == 0) {
			order = Integer.compare(area(one), area(other));
		}
		return (order == 0 ? Arrays.compare(one, other) : order) < 0;
	}

	private int area(int[] choice) {
		int hours = 0;
		for (int id : choice) {
			hours += candidates.hours(id);
		}
		return hours;
	}

	private boolean inStock(int[] choice) {
		for (int id : choice) {
			int film = candidates.film(id);
			int needed = 0;
			for (int other : choice) {
				needed += candidates.film(other) == film ? 1 : 0;
			}
			if (needed > blanks[film]) {
				return false;
			}
		}
		return true;
	}
}
