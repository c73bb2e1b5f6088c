package padwright.workup.checks.plans;

import padwright.model.plan.Piece;
import padwright.model.plan.PlanPackage;
import padwright.workup.checks.Advice;
import padwright.workup.checks.Check;
import padwright.workup.checks.Findings;
import padwright.workup.checks.IssueCodes;
import padwright.workup.checks.Place;

/** A partial shim covers more than nothing and less than the circle. */
public final class ArcCheck extends Check<Piece> {

	public ArcCheck() {
		super(Piece.class);
	}

	@Override
	protected void check(Piece piece, Findings findings) {
		if (piece.getFrom() != null && piece.getFrom().equals(piece.getTo())) {
			findings.error(IssueCodes.ARC_EMPTY, Place.of(piece, PlanPackage.Literals.PIECE__TO),
					Advice.of(IssueCodes.ARC_EMPTY, piece.getFrom(), piece.getTo()));
		}
	}
}
