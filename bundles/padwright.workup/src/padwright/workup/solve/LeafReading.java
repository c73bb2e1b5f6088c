package padwright.workup.solve;

import java.util.List;
import java.util.Optional;

import padwright.engine.clock.ClockHour;
import padwright.engine.evidence.FeltReading;
import padwright.engine.length.Length;
import padwright.engine.length.LengthUnit;
import padwright.engine.rim.FeelerSet;
import padwright.model.FeelerReading;
import padwright.model.Lengths;
import padwright.model.plan.Round;

/**
 * What the leaves said at an hour, whatever unit it is written in.
 *
 * @param slides the thickest leaf that slides free; empty where the finest drags
 * @param lightly whether the finest drags lightly; only in a plan whose readings are graded
 */
public record LeafReading(Optional<Length> slides, boolean lightly) {

	/** The finest leaf drags; firmly, where readings are graded. */
	public static final LeafReading DRAGS = new LeafReading(Optional.empty(), false);
	/** The finest leaf drags lightly. */
	public static final LeafReading DRAGS_LIGHTLY = new LeafReading(Optional.empty(), true);

	public static LeafReading slides(Length leaf) {
		return new LeafReading(Optional.of(leaf), false);
	}

	/** The readings of a round in its order, without those whose figure cannot be a length. */
	public static List<LeafReading> of(Round round) {
		LengthUnit unit = Lengths.unit(round.getUnit(), round);
		return round.getReadings().stream().flatMap(reading -> of(reading, unit).stream()).toList();
	}

	/**
	 * As evidence.
	 *
	 * @param graded whether a dot says that the leaf drags firmly
	 */
	FeltReading felt(ClockHour hour, FeelerSet leaves, boolean graded) {
		if (slides.isPresent()) {
			return FeltReading.slide(hour, slides.get(), leaves);
		}
		return lightly ? FeltReading.lightDrag(hour, leaves)
				: graded ? FeltReading.firmDrag(hour, leaves) : FeltReading.drag(hour, leaves);
	}

	/** A reading written in a unit; nothing where its figure cannot be a length. */
	public static Optional<LeafReading> of(FeelerReading reading, LengthUnit unit) {
		return reading.free().isEmpty() ? Optional.of(reading.lightly() ? DRAGS_LIGHTLY : DRAGS)
				: Lengths.exact(reading.free().get(), unit).map(LeafReading::slides);
	}
}
