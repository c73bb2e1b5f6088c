package padwright.workup.choose;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

import padwright.engine.length.Length;
import padwright.model.stock.Pad;
import padwright.model.stock.Backing;

/**
 * A pad for one cup.
 *
 * @param backing what goes under it, if it needs one
 * @param diameter of the one in stock that goes into the cup; empty where cup or stock do not say
 * @param reasons for and against it, the heaviest first
 * @param broken what rules of the shop say against it, in words; they are told, not weighed
 * @param hindrance why it cannot go in at all; empty if it can
 */
public record Candidate(Pad pad, Optional<Backing> backing, Optional<Length> diameter, List<Reason> reasons,
		List<String> broken, Optional<String> hindrance) {

	public Candidate {
		reasons = List.copyOf(reasons);
		broken = List.copyOf(broken);
	}

	/** All weights together: only good for an order, never to be shown without the reasons. */
	public BigDecimal weight() {
		return reasons.stream().map(Reason::weight).reduce(BigDecimal.ZERO, BigDecimal::add);
	}

	public boolean fits() {
		return hindrance.isEmpty();
	}
}
