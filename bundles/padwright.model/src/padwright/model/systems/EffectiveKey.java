package padwright.model.systems;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

import org.eclipse.emf.ecore.EObject;

import padwright.engine.length.Length;
import padwright.model.Lengths;
import padwright.model.Measure;
import padwright.model.keysystem.Coupling;
import padwright.model.keysystem.CupStyle;
import padwright.model.keysystem.HingeSide;
import padwright.model.keysystem.HoleMake;
import padwright.model.keysystem.Joint;
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
public final class EffectiveKey {

	private final Key definition;
	private final List<KeyFeatures> newestFirst;
	private Optional<Length> cupDiameter;
	private Optional<Length> cupDepth;

	EffectiveKey(Key definition, List<KeyFeatures> newestFirst) {
		this.definition = definition;
		this.newestFirst = List.copyOf(newestFirst);
	}

	EffectiveKey changedBy(KeyFeatures change) {
		return new EffectiveKey(definition, Stream.concat(Stream.of(change), newestFirst.stream()).toList());
	}

	public Key definition() {
		return definition;
	}

	/** Its definition and the changes to it, the newest first. */
	public List<KeyFeatures> features() {
		return newestFirst;
	}

	public String name() {
		return definition.getName();
	}

	/** The label, or the name where there is none. */
	public String label() {
		return definition.getLabel() == null ? name() : definition.getLabel();
	}

	/** Open if not said. */
	public Posture posture() {
		return first(features -> features.isSetPosture() ? features.getPosture() : null).orElse(Posture.OPEN);
	}

	public Optional<Touch> touch() {
		return first(features -> features.isSetTouch() ? features.getTouch() : null);
	}

	/** The couplings to the keys that close with this one; empty for none. */
	public List<Coupling> couplings() {
		return newestFirst.stream().filter(EffectiveKey::speaksOfCouplings).findFirst()
				.<List<Coupling>>map(KeyFeatures::getCouplings).orElse(List.of());
	}

	private static boolean speaksOfCouplings(KeyFeatures features) {
		return features.isUncoupled() || !features.getCouplings().isEmpty();
	}

	public Optional<Length> holeDiameter() {
		return length(KeyFeatures::getHole, ToneHole::getDiameter);
	}

	public Optional<Length> rimWidth() {
		return length(KeyFeatures::getHole, ToneHole::getRimWidth);
	}

	public Optional<HoleMake> holeMake() {
		return part(KeyFeatures::getHole, hole -> hole.isSetMake() ? hole.getMake() : null);
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

	public Optional<HingeSide> hinge() {
		return first(features -> features.isSetHinge() ? features.getHinge() : null);
	}

	/** Distance from the axis of the hinge to the centre of the cup. */
	public Optional<Length> arm() {
		return first(features -> Lengths.of(features.getArm(), features).orElse(null));
	}

	/** The body if not said. */
	public Joint joint() {
		return first(features -> features.isSetJoint() ? features.getJoint() : null).orElse(Joint.BODY);
	}

	/** Distance of the hole's centre from the upper end of its joint. */
	public Optional<Length> position() {
		return first(features -> Lengths.of(features.getPosition(), features).orElse(null));
	}

	private <T> Optional<T> first(Function<KeyFeatures, T> feature) {
		for (KeyFeatures features : newestFirst) {
			T known = feature.apply(features);
			if (known != null) {
				return Optional.of(known);
			}
		}
		return Optional.empty();
	}

	private <P extends EObject, T> Optional<T> part(Function<KeyFeatures, P> part, Function<P, T> feature) {
		return first(features -> Optional.ofNullable(part.apply(features)).map(feature).orElse(null));
	}

	private <P extends EObject> Optional<Length> length(Function<KeyFeatures, P> part, Function<P, Measure> measure) {
		return part(part, owner -> Lengths.of(measure.apply(owner), owner).orElse(null));
	}
}
