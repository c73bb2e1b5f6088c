package padwright.engine.coupling;

import java.util.List;

import padwright.engine.film.FilmSupply;
import padwright.engine.length.Length;

/**
 * A soft contact between two keys that is made thicker or thinner with film.
 *
 * @param material what the contact is made of
 * @param films the film on hand, thicknesses all different; empty if there is none
 */
public record Bumper(Material material, List<FilmSupply> films) implements Adjuster {

	/** What a bumper is made of. */
	public enum Material {
		CORK, FELT, FILM
	}

	/** @throws IllegalArgumentException if a thickness stands twice */
	public Bumper {
		films = List.copyOf(films);
		if (films.stream().map(FilmSupply::thickness).distinct().count() < films.size()) {
			throw new IllegalArgumentException("a film thickness stands twice in the stock of a bumper");
		}
	}

	/** Film to add for a positive travel, to take away for a negative one. */
	@Override
	public FilmChange adjustmentFor(Length travel) {
		return FilmChooser.choose(films, travel);
	}
}
