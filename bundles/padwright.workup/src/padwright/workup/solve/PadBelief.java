package padwright.workup.solve;

import java.math.BigDecimal;
import java.util.Optional;

import padwright.engine.closing.Hinge;
import padwright.engine.evidence.PadModel;
import padwright.engine.evidence.RimCondition;
import padwright.engine.evidence.RimPrior;
import padwright.engine.length.Length;
import padwright.engine.seating.Prices;
import padwright.model.Lengths;
import padwright.model.keysystem.HoleMake;
import padwright.model.stock.Levelling;
import padwright.model.stock.Stock;
import padwright.model.systems.EffectiveKey;
import padwright.workup.service.HingeHour;
import padwright.workup.service.KeyJob;
import padwright.workup.service.KeyRim;

/**
 * What is known of a pad, its key and the hand that feels it before it is felt.
 *
 * @param model as the engine takes it
 * @param assumedStiffness whether the stock gives none
 * @param assumedArm whether the key system gives none, or one that ends inside of the rim
 * @param assumedHinge whether the key system does not say on which side the hinge lies
 */
public record PadBelief(PadModel model, boolean assumedStiffness, boolean assumedArm, boolean assumedHinge) {

	/** Of a rim of which the key system says nothing (an assumption of ours; no source). */
	private static final Length USUAL_RADIUS = Length.millimetres("6.5");
	private static final BigDecimal PER_CENT = BigDecimal.valueOf(100);

	/** Of the pad in a row. */
	public static PadBelief of(KeyJob job) {
		Optional<EffectiveKey> key = job.key();
		HingeHour side = key.map(known -> HingeHour.of(job.plan().plan().getSystem(), known))
				.orElse(HingeHour.UNSAID);
		Length radius = key.flatMap(KeyRim::of).map(KeyRim::radius).orElse(USUAL_RADIUS);
		Optional<Length> arm = key.flatMap(EffectiveKey::arm).filter(radius::isShorterThan);
		Hinge hinge = arm.map(known -> Hinge.of(side.hour(), radius, known))
				.orElseGet(() -> Hinge.assumed(side.hour(), radius));
		PadStiffness stiffness = PadStiffness.of(job);
		return new PadBelief(
				new PadModel(RimPrior.of(condition(job)), hinge,
						arm.isPresent() ? PadModel.REACH_MEASURED : PadModel.REACH_ASSUMED, stiffness.stiffness(),
						PadModel.STIFFNESS_ASSUMED, feel(job)),
				stiffness.assumed(), arm.isEmpty(), side.assumed());
	}

	/** A nick or a warped cup makes any rim rough; a hole of which nothing is said is taken for a drawn one. */
	public static RimCondition condition(KeyJob job) {
		if (!job.service().getNicks().isEmpty() || job.service().isWarped()) {
			return RimCondition.ROUGH;
		}
		return job.key().flatMap(EffectiveKey::holeMake).filter(HoleMake.SOLDERED::equals).isPresent()
				? RimCondition.TRUE : RimCondition.DRAWN;
	}

	private static Optional<Levelling> levelling(KeyJob job) {
		return job.plan().stock().map(Stock::getLevelling);
	}

	/** How finely the hand feels, as the shop says, or as hands usually do. */
	public static Length feel(KeyJob job) {
		return levelling(job).flatMap(shop -> Lengths.of(shop.getFeel(), shop)).filter(feel -> feel.signum() > 0)
				.orElse(PadModel.USUAL_FEEL);
	}

	/** What the shop holds against a change, or what is usual. */
	public static Prices prices(KeyJob job) {
		Optional<Levelling> shop = levelling(job);
		return new Prices(share(shop.map(Levelling::getPiece), Prices.USUAL.piece()),
				share(shop.map(Levelling::getChange), Prices.USUAL.fullShims()),
				share(shop.map(Levelling::getEnough), Prices.USUAL.bar()));
	}

	private static double share(Optional<BigDecimal> percent, double usual) {
		return percent.map(said -> said.min(PER_CENT).divide(PER_CENT).doubleValue()).orElse(usual);
	}
}
