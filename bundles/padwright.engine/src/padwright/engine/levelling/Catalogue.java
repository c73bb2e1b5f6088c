package padwright.engine.levelling;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import padwright.engine.length.Length;

/**
 * What a search knows about one kind of pad and one set of thicknesses, whatever the gap: built when first needed, and
 * kept for the next pads of an instrument. Safe to share between threads.
 */
final class Catalogue {

	/** Beyond this the index of pairs would take too much memory. */
	private static final int MOST_THICKNESSES_IN_PAIRS = 20;
	private static final int KEPT = 3;
	private static final Map<Kind, Catalogue> RECENT = new LinkedHashMap<>(KEPT, 0.75f, true) {

		private static final long serialVersionUID = 1;

		@Override
		protected boolean removeEldestEntry(Map.Entry<Kind, Catalogue> eldest) {
			return size() > KEPT;
		}
	};

	private final CandidatePieces candidates;
	private final Waves waves;
	private final LiftIndex singles;
	private final boolean pairsFit;
	private Directions directions;
	private LiftIndex pairs;

	private record Kind(Stiffness stiffness, List<Length> thicknesses) {
	}

	private Catalogue(Kind kind) {
		candidates = new CandidatePieces(kind.thicknesses(), kind.stiffness());
		waves = new Waves(candidates);
		singles = new LiftIndex(candidates, waves, 1);
		pairsFit = kind.thicknesses().size() <= MOST_THICKNESSES_IN_PAIRS;
	}

	/** @param thicknesses in rising order, each once */
	static Catalogue of(Stiffness stiffness, List<Length> thicknesses) {
		Kind kind = new Kind(stiffness, thicknesses);
		synchronized (RECENT) {
			return RECENT.computeIfAbsent(kind, Catalogue::new);
		}
	}

	CandidatePieces candidates() {
		return candidates;
	}

	Waves waves() {
		return waves;
	}

	synchronized Directions directions() {
		if (directions == null) {
			directions = new Directions(candidates);
		}
		return directions;
	}

	/** The index from which the last pieces of a choice of {@code pieces} are taken. */
	synchronized LiftIndex closing(int pieces) {
		if (pieces < 3 || !pairsFit) {
			return singles;
		}
		if (pairs == null) {
			pairs = new LiftIndex(candidates, waves, 2);
		}
		return pairs;
	}
}
