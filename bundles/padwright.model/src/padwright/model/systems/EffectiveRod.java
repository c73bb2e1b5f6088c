package padwright.model.systems;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

import padwright.engine.length.Length;
import padwright.model.Resolved;
import padwright.model.keysystem.Bearing;
import padwright.model.keysystem.Rod;
import padwright.model.keysystem.RodFeatures;

/** A rod as it is in one system. */
public final class EffectiveRod extends Merged<Rod, RodFeatures> {

	private final EffectiveSystem system;

	EffectiveRod(Rod definition, List<RodFeatures> newestFirst, EffectiveSystem system) {
		super(definition, newestFirst);
		this.system = system;
	}

	EffectiveRod changedBy(RodFeatures change) {
		return new EffectiveRod(definition(), withNewest(change), system);
	}

	/** The joint it is on: the system's main one if not said; nothing where the system has no joints. */
	public Optional<EffectiveJoint> joint() {
		return first(features -> Resolved.of(features.getJoint()).flatMap(system::joint).orElse(null))
				.or(system::mainJoint);
	}

	/** Its upper post, from the upper end of its joint. */
	public Optional<Length> from() {
		return length(RodFeatures::getFrom);
	}

	/** Its lower post, from the upper end of its joint. */
	public Optional<Length> to() {
		return length(RodFeatures::getTo);
	}

	/** Degrees around the tube, as for a hole. */
	public Optional<BigDecimal> around() {
		return first(RodFeatures::getAround);
	}

	/** The keys on it that the system has, from the upper post down. */
	public List<Bearing> bearings() {
		return first(features -> features.getBearings().isEmpty() ? null : features.getBearings()).stream()
				.flatMap(List::stream)
				.filter(bearing -> Resolved.of(bearing.getKey()).flatMap(system::key).isPresent()).toList();
	}
}
