package padwright.workup.solve;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

import padwright.engine.film.FilmSupply;
import padwright.engine.length.Length;
import padwright.model.stock.FilmSet;
import padwright.workup.service.KeyJob;
import padwright.workup.service.ServicePlan;

/** What is left of every film set while a plan is solved row by row. Changes; for one thread. */
final class FilmStores {

	private final Map<FilmSet, FilmStore> stores = new HashMap<>();

	/** The stock less all that the plan has taken already. */
	FilmStores(ServicePlan plan) {
		FilmUse.in(plan).forEach(use -> store(use.films()).take(use.thickness()));
	}

	/** Puts back what the answers noted in a row have taken: its stack and the pieces of its last round. */
	void giveBackAnswers(KeyJob job) {
		answers(job).forEach(use -> store(use.films()).giveBack(use.thickness()));
	}

	/** Takes again what {@link #giveBackAnswers} put back. */
	void takeAnswers(KeyJob job) {
		answers(job).forEach(use -> store(use.films()).take(use.thickness()));
	}

	private static List<FilmUse> answers(KeyJob job) {
		return FilmUse.in(job).stream().filter(use -> FilmUse.isAnswer(job, use)).toList();
	}

	List<FilmSupply> supply(FilmSet films) {
		return store(films).supply();
	}

	void take(FilmSet films, List<Length> thicknesses) {
		thicknesses.forEach(store(films)::take);
	}

	void giveBack(FilmSet films, List<Length> thicknesses) {
		thicknesses.forEach(store(films)::giveBack);
	}

	private FilmStore store(FilmSet films) {
		return stores.computeIfAbsent(films, FilmStore::of);
	}
}
