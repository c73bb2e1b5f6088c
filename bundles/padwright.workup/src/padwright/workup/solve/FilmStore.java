package padwright.workup.solve;

import java.util.List;
import java.util.NavigableMap;
import java.util.TreeMap;

import padwright.engine.film.FilmSupply;
import padwright.engine.length.Length;
import padwright.model.Lengths;
import padwright.model.stock.Assortment;
import padwright.model.stock.FilmSet;
import padwright.model.stock.StockedSize;
import padwright.workup.service.KeyJob;
import padwright.workup.service.ServicePlan;

/** The blanks of one film set that are left while shims are taken from it. Changes; for one thread. */
public final class FilmStore {

	private final NavigableMap<Length, Integer> blanks = new TreeMap<>();

	private FilmStore() {
	}

	/** All that the stock says there is; sizes without a count never run out. */
	public static FilmStore of(FilmSet films) {
		FilmStore store = new FilmStore();
		Assortment thicknesses = films.getThicknesses();
		if (thicknesses != null) {
			for (StockedSize size : thicknesses.getSizes()) {
				Lengths.exact(size.getSize(), Lengths.unit(thicknesses.getUnit(), thicknesses))
						.filter(thickness -> thickness.signum() > 0)
						.ifPresent(thickness -> store.blanks.put(thickness, count(size)));
			}
		}
		return store;
	}

	/** The thicknesses of a row's film, thinnest first; none where no film set is named. */
	public static List<Length> thicknesses(KeyJob job) {
		return job.fitting().films().map(films -> of(films).thicknesses()).orElse(List.of());
	}

	/** What a plan has left of what the stock says there is. */
	public static FilmStore leftBy(ServicePlan plan, FilmSet films) {
		FilmStore store = of(films);
		FilmUse.in(plan).stream().filter(use -> use.films() == films).forEach(use -> use.drawFrom(store));
		return store;
	}

	private static int count(StockedSize size) {
		return size.isSetQuantity() ? size.getQuantity() : FilmSupply.UNLIMITED;
	}

	/** Thinnest first, those that have run out included. */
	public List<Length> thicknesses() {
		return List.copyOf(blanks.keySet());
	}

	public boolean stocks(Length thickness) {
		return blanks.containsKey(thickness);
	}

	/** Takes one blank; false, with nothing taken, where none is left. */
	public boolean take(Length thickness) {
		int left = blanks.getOrDefault(thickness, 0);
		if (left == 0) {
			return false;
		}
		add(thickness, -1);
		return true;
	}

	/** Puts one blank of a stocked thickness back. */
	public void giveBack(Length thickness) {
		if (stocks(thickness)) {
			add(thickness, 1);
		}
	}

	private void add(Length thickness, int count) {
		blanks.computeIfPresent(thickness, (film, left) -> left == FilmSupply.UNLIMITED ? left : left + count);
	}

	/** What is left, thinnest first. */
	public List<FilmSupply> supply() {
		return blanks.entrySet().stream().map(entry -> new FilmSupply(entry.getKey(), entry.getValue())).toList();
	}
}
