package padwright.workup.solve;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

import padwright.engine.film.FilmSupply;
import padwright.engine.length.Length;
import padwright.model.stock.FilmSet;
import padwright.workup.service.ServicePlan;

/** What is left of every film set while a plan is solved row by row. Changes; for one thread. */
final class FilmStores {

	private final Map<FilmSet, FilmStore> stores = new HashMap<>();
	private final Set<FilmUse> taken = new HashSet<>();

	/** The stock less all that the plan has taken already. */
	FilmStores(ServicePlan plan) {
		take(FilmUse.in(plan));
	}

	/** Takes what is noted in a plan, as far as there is enough. */
	void take(List<FilmUse> noted) {
		noted.stream().filter(use -> use.drawFrom(store(use.films()))).forEach(taken::add);
	}

	/** Puts back what is noted in a plan, as far as it was really taken. */
	void giveBack(List<FilmUse> noted) {
		noted.stream().filter(taken::remove).forEach(use -> use.undoIn(store(use.films())));
	}

	List<FilmSupply> supply(FilmSet films) {
		return store(films).supply();
	}

	void take(FilmSet films, List<Length> thicknesses) {
		thicknesses.forEach(store(films)::take);
	}

	private FilmStore store(FilmSet films) {
		return stores.computeIfAbsent(films, FilmStore::of);
	}
}
