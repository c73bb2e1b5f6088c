package padwright.workup.solve;

import java.util.List;
import java.util.Optional;

import padwright.engine.clock.ClockHour;
import padwright.engine.film.PartialShim;
import padwright.engine.length.Length;
import padwright.engine.levelling.Lift;
import padwright.engine.levelling.Stiffness;
import padwright.engine.rim.RimProfile;
import padwright.model.plan.Round;

/**
 * The pieces behind a pad that its last readings do not show: those noted after them, or else the solved ones.
 *
 * @param pieces none where the pad is level, or could not be solved
 */
public record NewPieces(List<PartialShim> pieces) {

	public NewPieces {
		pieces = List.copyOf(pieces);
	}

	public static NewPieces of(KeySolution solution) {
		Optional<Round> last = solution.job().lastRound();
		if (last.filter(PlacedPieces::isAnswered).isPresent()) {
			return new NewPieces(PlacedPieces.of(last.get()));
		}
		return new NewPieces(solution.level().map(answer -> answer.solution().pieces()).orElse(List.of()));
	}

	/** How much thicker they make the pad's bed on average: Σ thickness × hours / 12, half up to the nanometre. */
	public Length meanLift() {
		long halfHours = pieces.stream()
				.mapToLong(piece -> piece.thickness().times(piece.arc().halfHours()).nanometres())
				.reduce(0, Math::addExact);
		return new Length(Math.floorDiv(halfHours + ClockHour.STATIONS / 2, ClockHour.STATIONS));
	}

	/** What they leave of a gap: less the lift of every piece. Negative where the face would press in. */
	public RimProfile residual(RimProfile gap, Stiffness stiffness) {
		long[] left = gap.toNanometres();
		for (PartialShim piece : pieces) {
			RimProfile lift = Lift.of(piece, stiffness);
			for (int station = 0; station < left.length; station++) {
				left[station] -= lift.nanometresAt(station);
			}
		}
		return RimProfile.ofNanometres(left);
	}
}
