package padwright.engine.acoustics;

import java.util.List;

import padwright.engine.length.Length;

/**
 * A place where the bore was measured; it is straight from one to the next. Two at one place are a step.
 *
 * @param place along the bore in m, from wherever the others are measured
 * @param diameter in m, more than 0
 */
public record BorePoint(double place, double diameter) implements Measured<BorePoint> {

	/** @throws IllegalArgumentException if a size is out of range */
	public BorePoint {
		Sizes.requireBetween("place in the bore", place, -100, 100);
		Sizes.requirePositive("diameter of the bore", diameter);
	}

	public static BorePoint of(Length place, Length diameter) {
		return new BorePoint(Sizes.metres(place), Sizes.metres(diameter));
	}

	@Override
	public List<Measure> measures() {
		return List.of(Measure.PLACE, Measure.DIAMETER);
	}

	@Override
	public double size(Measure measure) {
		return switch (measure) {
			case PLACE -> place;
			case DIAMETER -> diameter;
			default -> throw Measured.noSuch(measure);
		};
	}

	@Override
	public BorePoint with(Measure measure, double size) {
		return switch (measure) {
			case PLACE -> new BorePoint(size, diameter);
			case DIAMETER -> new BorePoint(place, size);
			default -> throw Measured.noSuch(measure);
		};
	}
}
