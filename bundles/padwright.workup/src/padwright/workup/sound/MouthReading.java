package padwright.workup.sound;

import java.util.Optional;
import java.util.stream.Stream;

import padwright.engine.acoustics.BorePoint;
import padwright.engine.acoustics.Mouth;
import padwright.engine.length.Length;
import padwright.model.Lengths;
import padwright.model.keysystem.Embouchure;
import padwright.model.systems.EffectiveJoint;
import padwright.model.systems.EffectiveSystem;
import padwright.workup.checks.Advice;

/**
 * The embouchure hole of a system, and the cork. What the player's lip covers of it is left aside: no published table was
 * found, and without it the air column comes out as long as published. With a hole of 12.2 by 10.4 mm, a chimney of 5 mm and
 * a cork at 17.3 mm it is 50 mm longer at C4 than the tube; Th. Boehm, The Flute and Flute-Playing, gives 51.5 mm (from
 * memory).
 */
final class MouthReading {

	/**
	 * An embouchure hole.
	 *
	 * @param cork its place along the bore, in m
	 */
	record Head(Mouth mouth, double cork) {
	}

	private final EffectiveSystem system;
	private final Gaps gaps;

	private MouthReading(EffectiveSystem system, Gaps gaps) {
		this.system = system;
		this.gaps = gaps;
	}

	/** Nothing where the system has none, or leaves a gap. */
	static Optional<Head> of(EffectiveSystem system, Gaps gaps) {
		MouthReading reading = new MouthReading(system, gaps);
		return joint(system).flatMap(joint -> reading.head(joint, joint.embouchure().get()));
	}

	/** The joint with the embouchure hole, if there is one. */
	static Optional<EffectiveJoint> joint(EffectiveSystem system) {
		return system.joints().stream().filter(joint -> joint.embouchure().isPresent()).findFirst();
	}

	private Optional<Head> head(EffectiveJoint joint, Embouchure hole) {
		Optional<Length> place = gaps.need(Lengths.of(hole.getPosition(), hole), joint.definition(),
				Advice.of("sound-size.mouthPlace", joint.name()));
		Optional<Length> chimney = gaps.need(Lengths.of(hole.getChimney(), hole), joint.definition(),
				Advice.of("sound-size.mouthChimney", joint.name()));
		Optional<Length> cork = gaps.need(joint.cork(), joint.definition(),
				Advice.of("sound-size.cork", joint.name()));
		Optional<Length> upper = system.upperEnd(joint);
		Optional<Length> width = Lengths.of(hole.getWidth(), hole);
		Optional<Length> length = Lengths.of(hole.getLength(), hole);
		if (!Stream.of(place, chimney, cork, upper, width, length).allMatch(Optional::isPresent)) {
			return Optional.empty();
		}
		Length at = upper.get().plus(place.get());
		Mouth mouth = Mouth.of(at, width.get(), length.get(), chimney.get(), 0);
		return Optional.of(new Head(mouth, BorePoint.of(at.minus(cork.get()), width.get()).place()));
	}
}
