package padwright.model.systems;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

import padwright.engine.length.Length;
import padwright.model.Resolved;
import padwright.model.keysystem.Placed;
import padwright.model.keysystem.Titled;

/** Something merged that has a place on the instrument. */
abstract class MergedPlaced<D extends Titled, F extends Placed> extends Merged<D, F> {

	private final EffectiveSystem system;

	MergedPlaced(D definition, List<F> newestFirst, EffectiveSystem system) {
		super(definition, newestFirst);
		this.system = system;
	}

	final EffectiveSystem system() {
		return system;
	}

	/** The joint it is on: the system's main one if not said; nothing where the system has no joints. */
	public Optional<EffectiveJoint> joint() {
		return first(features -> Resolved.of(features.getJoint()).flatMap(system::joint).orElse(null))
				.or(system::mainJoint);
	}

	/** Distance of its middle from the upper end of its joint. */
	public Optional<Length> position() {
		return length(Placed::getPosition);
	}

	/** Degrees around the tube, clockwise seen from the upper end; 0, on top, if not said. */
	public BigDecimal around() {
		return first(Placed::getAround).orElse(BigDecimal.ZERO);
	}

	/** Distance of its middle from the upper end of the main joint, negative above it. */
	public Optional<Length> place() {
		return joint().flatMap(system::upperEnd).flatMap(end -> position().map(end::plus));
	}
}
