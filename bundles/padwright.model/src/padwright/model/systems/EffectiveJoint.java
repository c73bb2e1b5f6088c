package padwright.model.systems;

import java.util.List;
import java.util.Optional;

import padwright.engine.length.Length;
import padwright.model.Lengths;
import padwright.model.keysystem.BorePoint;
import padwright.model.keysystem.Embouchure;
import padwright.model.keysystem.Joint;
import padwright.model.keysystem.JointFeatures;

/** A joint as it is in one system. */
public final class EffectiveJoint extends Merged<Joint, JointFeatures> {

	/**
	 * Inside width of the tube at one place.
	 *
	 * @param position from the upper end of the joint; nothing for a bore that is the same everywhere
	 */
	public record Width(Optional<Length> position, Length diameter) {
	}

	EffectiveJoint(Joint definition, List<JointFeatures> newestFirst) {
		super(definition, newestFirst);
	}

	EffectiveJoint changedBy(JointFeatures change) {
		return new EffectiveJoint(definition(), withNewest(change));
	}

	/** Length of its bore up to that of the next joint. */
	public Optional<Length> length() {
		return length(JointFeatures::getLength);
	}

	/** From the upper end down, as written; empty where not said. Points without an exact diameter are left out. */
	public List<Width> bore() {
		return first(features -> features.getBore().isEmpty() ? null : features.getBore()).stream()
				.flatMap(List::stream).flatMap(point -> width(point).stream()).toList();
	}

	private static Optional<Width> width(BorePoint point) {
		return Lengths.of(point.getDiameter(), point)
				.map(diameter -> new Width(Lengths.of(point.getPosition(), point), diameter));
	}

	public Optional<Embouchure> embouchure() {
		return first(JointFeatures::getEmbouchure);
	}

	/** Distance of the face of the head cork from the middle of the embouchure hole. */
	public Optional<Length> cork() {
		return length(JointFeatures::getCork);
	}
}
