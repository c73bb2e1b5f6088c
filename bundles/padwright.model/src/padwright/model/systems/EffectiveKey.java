package padwright.model.systems;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;

import padwright.engine.length.Length;
import padwright.model.Measure;
import padwright.model.Resolved;
import padwright.model.keysystem.Coupling;
import padwright.model.keysystem.CupStyle;
import padwright.model.keysystem.Fastening;
import padwright.model.keysystem.HingeSide;
import padwright.model.keysystem.HoleMake;
import padwright.model.keysystem.Key;
import padwright.model.keysystem.KeyFeatures;
import padwright.model.keysystem.PadCup;
import padwright.model.keysystem.Posture;
import padwright.model.keysystem.ToneHole;
import padwright.model.keysystem.Touch;

/**
 * A key as it is in one system, after the changes that the system and those between it and the key's own made. What a
 * change leaves unsaid, down to the depth of a cup, is inherited. As the systems were when first asked: made anew after an
 * edit.
 */
public final class EffectiveKey extends MergedPlaced<Key, KeyFeatures> {

	private Optional<Length> cupDiameter;
	private Optional<Length> cupDepth;

	EffectiveKey(Key definition, List<KeyFeatures> newestFirst, EffectiveSystem system) {
		super(definition, newestFirst, system);
	}

	EffectiveKey changedBy(KeyFeatures change) {
		return new EffectiveKey(definition(), withNewest(change), system());
	}

	/** That of the key that it is one piece with; open if not said. */
	public Posture posture() {
		return first(features -> features.isSetPosture() ? features.getPosture() : null)
				.or(() -> whole().map(EffectiveKey::posture)).orElse(Posture.OPEN);
	}

	/** The key that it is one piece with, if it is not a piece by itself; nothing where that would be in a circle. */
	public Optional<EffectiveKey> whole() {
		return said().filter(other -> !reachesItself(other));
	}

	private Optional<EffectiveKey> said() {
		return first(features -> Resolved.of(features.getWhole()).orElse(null)).flatMap(system()::key);
	}

	private boolean reachesItself(EffectiveKey from) {
		Optional<EffectiveKey> next = Optional.of(from);
		for (int steps = 0; next.isPresent() && steps <= system().keys().size(); steps++) {
			if (next.get() == this) {
				return true;
			}
			next = next.get().said();
		}
		return next.isPresent();
	}

	/** The touches that press it, in the order written. */
	public List<Touch> touches() {
		return all(features -> features.isUntouched() || !features.getTouches().isEmpty(), KeyFeatures::getTouches);
	}

	/** The couplings to the keys that are closed when this one is pressed; empty for none. */
	public List<Coupling> closes() {
		return all(features -> features.isClosesNothing() || !features.getCloses().isEmpty(), KeyFeatures::getCloses);
	}

	/** The couplings to the keys that are opened when this one is pressed; empty for none. */
	public List<Coupling> opens() {
		return all(features -> features.isOpensNothing() || !features.getOpens().isEmpty(), KeyFeatures::getOpens);
	}

	/** The couplings to the keys that are kept shut when this one is pressed, whatever else is; empty for none. */
	public List<Coupling> holds() {
		return all(features -> features.isHoldsNothing() || !features.getHolds().isEmpty(), KeyFeatures::getHolds);
	}

	private <T> List<T> all(Predicate<KeyFeatures> speaksOfIt, Function<KeyFeatures, List<T>> list) {
		return first(features -> speaksOfIt.test(features) ? list.apply(features) : null).orElse(List.of());
	}

	/** Whether it is without a pad: neither a cup nor a hole is written at it. */
	public boolean isLever() {
		return first(KeyFeatures::getCup).isEmpty() && first(KeyFeatures::getHole).isEmpty() && over().isEmpty();
	}

	/** The tone hole under its pad where that is written elsewhere. */
	public Optional<EffectiveHole> over() {
		return first(features -> features.getOver() != null || features.getHole() != null ? features : null)
				.flatMap(features -> Resolved.of(features.getOver())).flatMap(system()::hole);
	}

	/** Inside. */
	public Optional<Length> holeDiameter() {
		return hole(ToneHole::getDiameter, EffectiveHole::diameter);
	}

	public Optional<Length> rimWidth() {
		return hole(ToneHole::getRimWidth, EffectiveHole::rimWidth);
	}

	/** From the bore to the rim. */
	public Optional<Length> chimney() {
		return hole(ToneHole::getChimney, EffectiveHole::chimney);
	}

	/** How much wider the hole is at the bore, in diameter. */
	public Optional<Length> undercut() {
		return hole(ToneHole::getUndercut, EffectiveHole::undercut);
	}

	private Optional<Length> hole(Function<ToneHole, Measure> own, Function<EffectiveHole, Optional<Length>> elsewhere) {
		return over().isPresent() ? over().flatMap(elsewhere) : length(KeyFeatures::getHole, own);
	}

	public Optional<HoleMake> holeMake() {
		return over().isPresent() ? over().flatMap(EffectiveHole::make)
				: part(KeyFeatures::getHole, hole -> hole.isSetMake() ? hole.getMake() : null);
	}

	public Optional<Length> cupDiameter() {
		if (cupDiameter == null) {
			cupDiameter = length(KeyFeatures::getCup, PadCup::getDiameter);
		}
		return cupDiameter;
	}

	/** From lip to floor. */
	public Optional<Length> cupDepth() {
		if (cupDepth == null) {
			cupDepth = length(KeyFeatures::getCup, PadCup::getDepth);
		}
		return cupDepth;
	}

	public Optional<CupStyle> cupStyle() {
		return part(KeyFeatures::getCup, cup -> cup.isSetStyle() ? cup.getStyle() : null);
	}

	/** Diameter of the opening of a perforated cup. */
	public Optional<Length> perforation() {
		return cupStyle().filter(CupStyle.PERFORATED::equals)
				.flatMap(perforated -> length(KeyFeatures::getCup, PadCup::getPerforation));
	}

	public Optional<Fastening> fastening() {
		return part(KeyFeatures::getCup, cup -> cup.isSetFastening() ? cup.getFastening() : null);
	}

	public Optional<HingeSide> hinge() {
		return first(features -> features.isSetHinge() ? features.getHinge() : null);
	}

	/** Distance from the hinge axis to the middle of the cup. */
	public Optional<Length> arm() {
		return length(KeyFeatures::getArm);
	}

	/** How far its pad stands above the hole when open. */
	public Optional<Length> rise() {
		return length(KeyFeatures::getRise);
	}

	/** Weight in grams at which its spring gives way, as it should be. */
	public Optional<BigDecimal> spring() {
		return first(KeyFeatures::getSpring);
	}

	/** That of its hole where the hole is written elsewhere and the key says none. */
	@Override
	public Optional<EffectiveJoint> joint() {
		return saysNo(KeyFeatures::getJoint) ? over().flatMap(EffectiveHole::joint).or(super::joint) : super.joint();
	}

	/** Distance of the hole's centre from the upper end of its joint. */
	@Override
	public Optional<Length> position() {
		return super.position().or(() -> over().flatMap(EffectiveHole::position));
	}

	@Override
	public BigDecimal around() {
		return saysNo(KeyFeatures::getAround) ? over().map(EffectiveHole::around).orElse(BigDecimal.ZERO)
				: super.around();
	}

	private boolean saysNo(Function<KeyFeatures, ?> feature) {
		return first(feature).isEmpty();
	}
}
