package padwright.engine.acoustics;

import java.util.List;

/** A part of an instrument with sizes in m. */
sealed interface Measured<T extends Measured<T>> permits BorePoint, Mouth, Hole {

	/** What can be measured of it. */
	List<Measure> measures();

	/** @throws IllegalArgumentException if this cannot be measured of it */
	double size(Measure measure);

	/**
	 * The same with another size.
	 *
	 * @throws IllegalArgumentException if this cannot be measured of it, or the size is out of range
	 */
	T with(Measure measure, double size);

	static IllegalArgumentException noSuch(Measure measure) {
		return new IllegalArgumentException("there is no " + measure + " here");
	}
}
