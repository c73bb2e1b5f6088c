package padwright.workup.parts;

import java.util.List;
import java.util.Optional;

import padwright.engine.clock.Arc;
import padwright.engine.film.PartialShim;
import padwright.model.Lengths;
import padwright.model.plan.Piece;
import padwright.model.plan.Round;

/** The partial shims that a plan notes, as far as they can be understood. */
public final class NotedPieces {

	private NotedPieces() {
	}

	/** Those of one round, in its order; pieces without an arc or a thickness are left out (a check reports them). */
	public static List<PartialShim> of(Round round) {
		return round.getPieces().stream().map(NotedPieces::shim).flatMap(Optional::stream).toList();
	}

	private static Optional<PartialShim> shim(Piece piece) {
		boolean isArc = piece.getFrom() != null && piece.getTo() != null && !piece.getFrom().equals(piece.getTo());
		return Lengths.of(piece.getThickness(), piece).filter(thickness -> isArc && thickness.signum() > 0)
				.map(thickness -> new PartialShim(Arc.between(piece.getFrom(), piece.getTo()), thickness));
	}
}
