package padwright.workup.solve;

import java.util.List;
import java.util.Optional;

import padwright.engine.film.PartialShim;
import padwright.engine.length.Length;
import padwright.engine.rim.RimEstimate;
import padwright.engine.rim.RimFit;
import padwright.engine.rim.RimProfile;
import padwright.model.plan.Round;
import padwright.workup.service.KeyJob;

/**
 * What one round of a plan tells: the gap that was felt, and what the pieces noted after it are predicted to leave. A
 * model: the feeler decides.
 *
 * @param rim the gap that the readings tell of
 * @param predicted the gap with the pieces in place; empty where none are noted
 */
public record RoundEffect(RimEstimate rim, Optional<RimProfile> predicted) {

	/** Nothing where the readings cannot be used. */
	public static Optional<RoundEffect> of(KeyJob job, Round round) {
		return RoundReadings.of(job, round, why -> {
		}).map(readings -> of(job, RimFit.fit(readings), PlacedPieces.of(round)));
	}

	private static RoundEffect of(KeyJob job, RimEstimate rim, List<PartialShim> pieces) {
		return new RoundEffect(rim, pieces.isEmpty() ? Optional.empty()
				: Optional.of(new NewPieces(pieces).residual(rim.profile(), PadStiffness.of(job).stiffness())));
	}

	/** Widest less narrowest gap as felt. */
	public Length before() {
		return rim.profile().spread();
	}

	/** Widest less narrowest gap with the pieces in place; empty where none are noted. */
	public Optional<Length> after() {
		return predicted.map(RimProfile::spread);
	}
}
