package padwright.engine.seating;

import java.util.Optional;

import padwright.engine.film.PartialShim;
import padwright.engine.length.Length;

/**
 * One thing that can be done under a pad.
 *
 * @param piece placed or taken out; empty for a change of the full shims
 * @param fullShims by how much the full shims change
 * @param taken whether the piece is taken out
 */
record Action(Optional<PartialShim> piece, Length fullShims, boolean taken) {

	static Action place(PartialShim piece) {
		return new Action(Optional.of(piece), Length.ZERO, false);
	}

	static Action takeOut(PartialShim piece) {
		return new Action(Optional.of(piece), Length.ZERO, true);
	}

	static Action changeFullShims(Length by) {
		return new Action(Optional.empty(), by, false);
	}

	boolean places() {
		return piece.isPresent() && !taken;
	}

	boolean changesFullShims() {
		return piece.isEmpty();
	}
}
