package padwright.engine.acoustics;

import padwright.engine.length.Length;

/**
 * The pad cup over a hole.
 *
 * @param diameter of the cup in m, more than 0
 * @param rise of the pad over the rim when it is open, in m, more than 0
 * @param opening diameter of its perforation in m, 0 if it is plain
 * @param depth of the perforation in m: pad and cup, 0 or more
 */
public record Cup(double diameter, double rise, double opening, double depth) {

	/** @throws IllegalArgumentException if a size is out of range */
	public Cup {
		Sizes.requirePositive("diameter of a cup", diameter);
		Sizes.requirePositive("rise of a pad", rise);
		Sizes.requireBetween("opening of a perforated pad", opening, 0, diameter);
		Sizes.requireBetween("depth of the opening of a pad", depth, 0, 1);
	}

	/** Without a perforation. */
	public static Cup plain(Length diameter, Length rise) {
		return new Cup(Sizes.metres(diameter), Sizes.metres(rise), 0, 0);
	}

	public static Cup perforated(Length diameter, Length rise, Length opening, Length depth) {
		return new Cup(Sizes.metres(diameter), Sizes.metres(rise), Sizes.metres(opening), Sizes.metres(depth));
	}

	public boolean isPerforated() {
		return opening > 0;
	}

	Cup with(Measure measure, double size) {
		return switch (measure) {
			case CUP -> new Cup(size, rise, opening, depth);
			case RISE -> new Cup(diameter, size, opening, depth);
			case OPENING -> new Cup(diameter, rise, size, depth);
			case DEPTH -> new Cup(diameter, rise, opening, size);
			default -> throw Measured.noSuch(measure);
		};
	}
}
