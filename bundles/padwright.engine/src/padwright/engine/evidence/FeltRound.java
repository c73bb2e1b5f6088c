package padwright.engine.evidence;

import java.util.List;

/**
 * One round of feeling.
 *
 * @param readings what the leaves said, at least one
 * @param film what was in place then
 */
public record FeltRound(List<FeltReading> readings, FilmInPlace film) {

	/** @throws IllegalArgumentException if there is no reading */
	public FeltRound {
		readings = List.copyOf(readings);
		if (readings.isEmpty()) {
			throw new IllegalArgumentException("a round without a reading");
		}
	}

	/** Whether no hour drags: the face touches nowhere that was felt. */
	public boolean nothingDrags() {
		return readings.stream().noneMatch(FeltReading::drags);
	}
}
