package padwright.workup.solve;

import java.math.BigDecimal;
import java.util.Optional;

import padwright.engine.levelling.Stiffness;
import padwright.model.stock.Pad;
import padwright.model.stocks.PadFigures;
import padwright.workup.service.KeyJob;

/**
 * The stiffness that a pad is reckoned with.
 *
 * @param assumed whether the pad says none itself, so that an estimate for its kind stands in
 */
public record PadStiffness(Stiffness stiffness, boolean assumed) {

	/** A bench estimate, unverified: a shop calibrates its own and writes it in the stock. */
	private static final Stiffness SOFT = new Stiffness(0.003);

	/** Of the pad in a row or else its kind; as of a soft one where neither is known. */
	public static PadStiffness of(KeyJob job) {
		Optional<Pad> pad = job.fitting().pad();
		Optional<Stiffness> own = stiffness(pad.map(Pad::getStiffness));
		return new PadStiffness(own.or(() -> stiffness(pad.flatMap(PadFigures::stiffness))).orElse(SOFT), own.isEmpty());
	}

	private static Optional<Stiffness> stiffness(Optional<BigDecimal> lambda) {
		return lambda.map(BigDecimal::doubleValue).filter(known -> known <= 1).map(Stiffness::new);
	}
}
