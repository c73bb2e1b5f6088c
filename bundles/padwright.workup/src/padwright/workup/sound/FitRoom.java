package padwright.workup.sound;

import padwright.engine.length.Length;

/**
 * How far a layout may be changed to come in tune.
 *
 * @param move by how much a hole, and the open end, may be moved up or down; 0 keeps them
 * @param widen by how much the diameter of a hole may grow or shrink; 0 keeps it
 * @param octaves whose usual notes count, 1 or more
 */
public record FitRoom(Length move, Length widen, int octaves) {

	/** @throws IllegalArgumentException if there is no room */
	public FitRoom {
		if (move.signum() < 0 || widen.signum() < 0 || move.signum() + widen.signum() == 0 || octaves < 1) {
			throw new IllegalArgumentException("a fit needs room to move or to widen, and an octave");
		}
	}
}
