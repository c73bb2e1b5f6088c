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
		Optional<Stiffness> figure = pad.flatMap(PadFigures::stiffness).map(BigDecimal::doubleValue)
				.filter(lambda -> lambda <= 1).map(Stiffness::new);
		return new PadStiffness(figure.orElse(SOFT), pad.map(Pad::getStiffness).isEmpty());
	}
}
