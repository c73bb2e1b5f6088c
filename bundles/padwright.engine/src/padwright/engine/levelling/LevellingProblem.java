package padwright.engine.levelling;

import java.util.HashSet;
import java.util.List;
import java.util.Set;

import padwright.engine.film.FilmSupply;
import padwright.engine.length.Length;
import padwright.engine.rim.RimProfile;

/**
 * A pad to be levelled with partial shims.
 *
 * @param gap from pad face to rim before any piece, within ±2 mm
 * @param stiffness of the pad
 * @param films the thicknesses that may be cut, each listed once, at most 2 mm; every piece takes one blank
 * @param tolerance the spread within which the pad counts as seated, 0 or more
 * @param maxPieces 0 to 4
 */
public record LevellingProblem(RimProfile gap, Stiffness stiffness, List<FilmSupply> films, Length tolerance,
		int maxPieces) {

	/** The most pieces that are ever placed behind one pad. */
	public static final int MOST_PIECES = 4;

	/** Keeps weighted sums over the stations of a gap less four lifts within 32 bits. */
	private static final long FARTHEST_NANOMETRES = 2_000_000;

	/** @throws IllegalArgumentException if a value is out of the ranges above, or a thickness is listed twice */
	public LevellingProblem {
		films = List.copyOf(films);
		if (gap.stream().anyMatch(nanometres -> Math.abs(nanometres) > FARTHEST_NANOMETRES)) {
			throw new IllegalArgumentException("a gap beyond 2 mm is no gap under a pad");
		}
		requireUsable(films);
		if (tolerance.signum() < 0) {
			throw new IllegalArgumentException("a seat tolerance of " + tolerance + " is below nothing");
		}
		if (maxPieces < 0 || maxPieces > MOST_PIECES) {
			throw new IllegalArgumentException(maxPieces + " pieces is not 0 to " + MOST_PIECES);
		}
	}

	private static void requireUsable(List<FilmSupply> films) {
		Set<Length> seen = new HashSet<>();
		for (FilmSupply film : films) {
			if (film.thickness().nanometres() > FARTHEST_NANOMETRES) {
				throw new IllegalArgumentException("film of " + film.thickness() + " is thicker than 2 mm");
			}
			if (!seen.add(film.thickness())) {
				throw new IllegalArgumentException("film of " + film.thickness() + " is listed twice");
			}
		}
	}
}
