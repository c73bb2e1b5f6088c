package padwright.engine.levelling;

/**
 * Finds the best choice of a given number of pieces: the first ones are tried one after another, largest first in the
 * direction in which fewest can help; the last one or two come out of an index.
 *
 * <p>Nothing is lost: in whatever direction, one of the pieces of a choice takes away most, and trying that one first
 * finds the choice. So the others need not be tried where they take away more (see {@link #exceedsAnEarlierPiece}).
 */
final class Search {

	private static final int STATIONS = CandidatePieces.STATIONS;
	private static final int HOURS = STATIONS / 2;

	private final Catalogue catalogue;
	private final CandidatePieces candidates;
	private final Incumbent incumbent;
	private final Meter meter;
	private final int count;
	private final LiftIndex closing;
	private final IndexQuery query;
	private final int[] pieces;
	private final int[][] residuals;
	private final int[][] waves;
	private final Directions.Choice[] choices;
	private final int[] taken;
	private long bound;

	/** @param count of pieces in a choice, 1 to 4 */
	Search(Catalogue catalogue, Incumbent incumbent, Meter meter, int count) {
		this.catalogue = catalogue;
		this.candidates = catalogue.candidates();
		this.incumbent = incumbent;
		this.meter = meter;
		this.count = count;
		this.closing = catalogue.closing(count);
		this.query = new IndexQuery(closing, incumbent, meter);
		this.pieces = new int[count];
		this.residuals = new int[count][STATIONS];
		this.waves = new int[count][Waves.COUNT];
		this.choices = new Directions.Choice[count];
		this.taken = new int[count];
	}

	/** Offers the incumbent what is at least as good, as far as the budget goes. */
	void run(int[] gap) {
		System.arraycopy(gap, 0, residuals[0], 0, STATIONS);
		System.arraycopy(Waves.of(gap), 0, waves[0], 0, Waves.COUNT);
		place(0);
	}

	/** No choice of this many pieces has a smaller spread than this, however early the search was ended; 0 or more. */
	long bound() {
		return Math.min(bound, incumbent.spread());
	}

	private void place(int chosen) {
		if (count - chosen == closing.pieces()) {
			query.run(residuals[chosen], waves[chosen], pieces, chosen);
		} else if (count == 2) {
			placeAny();
		} else {
			placeLargest(chosen);
		}
	}

	/** For two pieces sorting the candidates costs more than trying them all. */
	private void placeAny() {
		for (int id = 0; id < candidates.count() && !meter.isSpent(); id++) {
			placeNext(0, id);
		}
	}

	private void placeLargest(int chosen) {
		Directions.Choice choice = catalogue.directions().narrowest(residuals[chosen], count - chosen,
				incumbent.window());
		choices[chosen] = choice;
		for (int rank = 0; rank < candidates.count() && !meter.isSpent(); rank++) {
			int most = choice.direction().taken(rank);
			long least = choice.leastSpread(most);
			raiseBound(chosen, least);
			if (least > incumbent.window()) {
				return;
			}
			int id = candidates.turned(choice.direction().candidate(rank), choice.turn());
			if (!exceedsAnEarlierPiece(chosen, id)) {
				taken[chosen] = most;
				placeNext(chosen, id);
			}
		}
	}

	/** With the first piece still to be tried taking that little away, no smaller spread is left to be found. */
	private void raiseBound(int chosen, long least) {
		if (chosen == 0) {
			bound = Math.max(bound, least);
		}
	}

	private boolean exceedsAnEarlierPiece(int chosen, int id) {
		for (int earlier = 0; earlier < chosen; earlier++) {
			Directions.Choice choice = choices[earlier];
			int turnedBack = candidates.turned(id, (HOURS - choice.turn()) % HOURS);
			if (choice.direction().takenBy(turnedBack) > taken[earlier]) {
				return true;
			}
		}
		return false;
	}

	private void placeNext(int chosen, int id) {
		pieces[chosen] = id;
		int[] before = residuals[chosen];
		int[] after = residuals[chosen + 1];
		int[] lifts = candidates.lifts();
		for (int station = 0; station < STATIONS; station++) {
			after[station] = before[station] - lifts[id * STATIONS + station];
		}
		catalogue.waves().take(id, waves[chosen], waves[chosen + 1]);
		place(chosen + 1);
	}
}
