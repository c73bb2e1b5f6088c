package padwright.engine.acoustics;

import java.util.List;

import padwright.engine.length.Length;

/**
 * The embouchure hole of a flute. The bore goes on above it to the cork, which is where it begins. No published table
 * of what a lip does to it was found, so the lip is taken to leave a round opening of the free area.
 *
 * @param place along the bore in m
 * @param diameter in m of a round hole of the same area, more than 0
 * @param chimney its height in m, 0 or more
 * @param covered share of its area under the lip, 0 to 0.95
 */
public record Mouth(double place, double diameter, double chimney, double covered) implements Measured<Mouth> {

	/** @throws IllegalArgumentException if a size is out of range */
	public Mouth {
		Sizes.requireBetween("place of the embouchure hole", place, -100, 100);
		Sizes.requirePositive("diameter of the embouchure hole", diameter);
		Sizes.requireBetween("chimney of the embouchure hole", chimney, 0, 1);
		Sizes.requireBetween("share under the lip", covered, 0, 0.95);
	}

	/** @param width across the bore and {@code length} along it, of an oval hole */
	public static Mouth of(Length place, Length width, Length length, Length chimney, double covered) {
		double round = StrictMath.sqrt(Sizes.metres(width) * Sizes.metres(length));
		return new Mouth(Sizes.metres(place), round, Sizes.metres(chimney), covered);
	}

	@Override
	public List<Measure> measures() {
		return List.of(Measure.PLACE, Measure.DIAMETER, Measure.CHIMNEY);
	}

	@Override
	public double size(Measure measure) {
		return switch (measure) {
			case PLACE -> place;
			case DIAMETER -> diameter;
			case CHIMNEY -> chimney;
			default -> throw Measured.noSuch(measure);
		};
	}

	@Override
	public Mouth with(Measure measure, double size) {
		return switch (measure) {
			case PLACE -> new Mouth(size, diameter, chimney, covered);
			case DIAMETER -> new Mouth(place, size, chimney, covered);
			case CHIMNEY -> new Mouth(place, diameter, size, covered);
			default -> throw Measured.noSuch(measure);
		};
	}
}
