package padwright.model.systems;

import java.util.List;

import padwright.model.keysystem.Touch;
import padwright.model.keysystem.TouchFeatures;

/** A touch as it is in one system. */
public final class EffectiveTouch extends MergedPlaced<Touch, TouchFeatures> {

	EffectiveTouch(Touch definition, List<TouchFeatures> newestFirst, EffectiveSystem system) {
		super(definition, newestFirst, system);
	}

	EffectiveTouch changedBy(TouchFeatures change) {
		return new EffectiveTouch(definition(), withNewest(change), system());
	}

	/** The finger that presses it; one called like the touch if not said. */
	public String finger() {
		return first(TouchFeatures::getFinger).orElse(name());
	}
}
