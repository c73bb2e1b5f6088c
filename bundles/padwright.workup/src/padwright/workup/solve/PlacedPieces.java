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

	/** A piece, unless its arc is empty or it has no thickness. */
	public static Optional<PartialShim> of(Piece piece) {
		boolean isArc = piece.getFrom() != null && piece.getTo() != null && !piece.getFrom().equals(piece.getTo());
		return Lengths.of(piece.getThickness(), piece).filter(thickness -> isArc && thickness.signum() > 0)
				.map(thickness -> new PartialShim(Arc.between(piece.getFrom(), piece.getTo()), thickness));
	}
}
