package padwright.workup.solve;

import java.math.BigDecimal;
import java.util.Optional;

import padwright.engine.levelling.Stiffness;
import padwright.model.stock.Pad;
import padwright.model.stock.PadKind;
import padwright.workup.service.KeyJob;

/**
 * The stiffness that a pad is reckoned with.
 *
 * @param assumed whether the stock gives none, so that a bench estimate for its kind stands in
 */
public record PadStiffness(Stiffness stiffness, boolean assumed) {

	/** Bench estimates, unverified: a shop calibrates its own and writes it in the stock. */
	private static final Stiffness RIGID_BASE = new Stiffness(0.1);
	private static final Stiffness SOFT = new Stiffness(0.003);

	/** Of the pad in a row; as of a soft one where none is named. */
	public static PadStiffness of(KeyJob job) {
		Optional<Pad> pad = job.fitting().pad();
		Optional<Stiffness> known = pad.map(Pad::getStiffness).map(BigDecimal::doubleValue)
				.filter(lambda -> lambda <= 1).map(Stiffness::new);
		return new PadStiffness(known.orElse(pad.filter(PadStiffness::isRigid).isPresent() ? RIGID_BASE : SOFT),
				known.isEmpty());
	}

	private static boolean isRigid(Pad pad) {
		return pad.isSetKind() && (pad.getKind() == PadKind.ENGINEERED || pad.getKind() == PadKind.METAL);
	}
}
