package padwright.workup.solve;

import java.util.List;
import java.util.Optional;

import padwright.engine.clock.Arc;
import padwright.engine.film.PartialShim;
import padwright.model.Lengths;
import padwright.model.plan.Piece;
import padwright.model.plan.Round;

/** Pieces of film as a plan notes them. */
public final class PlacedPieces {

	private PlacedPieces() {
	}

	/** The pieces noted after the readings of a round, without those that a check reports as impossible. */
	public static List<PartialShim> of(Round round) {
		return round.getPieces().stream().flatMap(piece -> of(piece).stream()).toList();
	}

	/** The pieces of earlier rounds that were taken out after the readings of a round, likewise. */
	public static List<PartialShim> takenOut(Round round) {
		return round.getRemoved().stream().flatMap(piece -> of(piece).stream()).toList();
	}

	/** Whether a round says what was done after its readings, if only that nothing had to be. */
	public static boolean isAnswered(Round round) {
		return round.isLevel() || !round.getPieces().isEmpty() || !round.getRemoved().isEmpty()
				|| round.getFull() != null;
	}

	/** A piece, unless its arc is empty or it has no thickness. */
	public static Optional<PartialShim> of(Piece piece) {
		boolean isArc = piece.getFrom() != null && piece.getTo() != null && !piece.getFrom().equals(piece.getTo());
		return Lengths.of(piece.getThickness(), piece).filter(thickness -> isArc && thickness.signum() > 0)
				.map(thickness -> new PartialShim(Arc.between(piece.getFrom(), piece.getTo()), thickness));
	}
}
