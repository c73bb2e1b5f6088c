package padwright.model.systems;

import java.util.List;
import java.util.Optional;

import padwright.engine.length.Length;
import padwright.model.keysystem.Hole;
import padwright.model.keysystem.HoleFeatures;
import padwright.model.keysystem.HoleMake;
import padwright.model.keysystem.ToneHole;
import padwright.model.keysystem.Touch;

/** A tone hole of its own as it is in one system. */
public final class EffectiveHole extends MergedPlaced<Hole, HoleFeatures> {

	EffectiveHole(Hole definition, List<HoleFeatures> newestFirst, EffectiveSystem system) {
		super(definition, newestFirst, system);
	}

	EffectiveHole changedBy(HoleFeatures change) {
		return new EffectiveHole(definition(), withNewest(change), system());
	}

	/** The touches of fingers that cover it; empty where only a pad does. */
	public List<Touch> touches() {
		return first(features -> features.isUntouched() || !features.getTouches().isEmpty() ? features.getTouches()
				: null).<List<Touch>>map(List::copyOf).orElse(List.of());
	}

	/** Inside. */
	public Optional<Length> diameter() {
		return length(HoleFeatures::getSize, ToneHole::getDiameter);
	}

	public Optional<Length> rimWidth() {
		return length(HoleFeatures::getSize, ToneHole::getRimWidth);
	}

	/** From the bore to the rim. */
	public Optional<Length> chimney() {
		return length(HoleFeatures::getSize, ToneHole::getChimney);
	}

	/** How much wider it is at the bore, in diameter. */
	public Optional<Length> undercut() {
		return length(HoleFeatures::getSize, ToneHole::getUndercut);
	}

	public Optional<HoleMake> make() {
		return part(HoleFeatures::getSize, size -> size.isSetMake() ? size.getMake() : null);
	}
}
