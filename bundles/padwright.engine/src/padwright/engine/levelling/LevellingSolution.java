package padwright.engine.levelling;

import java.util.List;

import padwright.engine.film.PartialShim;
import padwright.engine.length.Length;
import padwright.engine.rim.RimProfile;

/**
 * The pieces that level a pad best, and what they leave.
 *
 * @param pieces in canonical order: by hour of the start from 12, 1, 2 …, then length, then thickness
 * @param spreadBefore of the gap as it was
 * @param spreadAfter of the residual
 * @param excess of the spread after over the tolerance, 0 if within
 * @param meanLift of the face over the whole clock: Σ thickness × hours / 12, rounded half up to the nanometre
 * @param residual the gap less the lift of every piece
 * @param proof whether this is the best choice
 */
public record LevellingSolution(List<PartialShim> pieces, Length spreadBefore, Length spreadAfter, Length excess,
		Length meanLift, RimProfile residual, Proof proof) {

	public LevellingSolution {
		pieces = List.copyOf(pieces);
	}
}
