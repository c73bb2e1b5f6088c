package padwright.engine.coupling;

import java.util.List;

import padwright.engine.film.FilmSupply;
import padwright.engine.length.Length;

/** What sets the moment at which a driver takes its driven key with it. */
public sealed interface Adjuster permits Screw, Bumper {

	/**
	 * What to do for the contact to move by {@code travel}: positive toward the driven key, which then closes earlier,
	 * negative away from it.
	 */
	Adjustment adjustmentFor(Length travel);

	/** A screw of this thread. */
	static Screw screw(ScrewThread thread) {
		return new Screw(thread.pitch());
	}

	/** A cork bumper, thickened with film from this stock. */
	static Bumper cork(List<FilmSupply> films) {
		return new Bumper(Bumper.Material.CORK, films);
	}

	/** A felt bumper, thickened with film from this stock. */
	static Bumper felt(List<FilmSupply> films) {
		return new Bumper(Bumper.Material.FELT, films);
	}

	/** Film alone, from this stock. */
	static Bumper film(List<FilmSupply> films) {
		return new Bumper(Bumper.Material.FILM, films);
	}
}
