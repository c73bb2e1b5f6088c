package padwright.workup.checks.plans;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

import padwright.engine.length.Length;
import padwright.model.plan.PlanPackage;
import padwright.model.stock.FilmSet;
import padwright.workup.checks.Advice;
import padwright.workup.checks.Check;
import padwright.workup.checks.Findings;
import padwright.workup.checks.IssueCodes;
import padwright.workup.checks.Place;
import padwright.workup.service.ServicePlan;
import padwright.workup.solve.FilmStore;
import padwright.workup.solve.FilmUse;

/** Shims are of film that is in stock, and no more of it than there is. */
public final class FilmCheck extends Check<ServicePlan> {

	public FilmCheck() {
		super(ServicePlan.class);
	}

	@Override
	protected void check(ServicePlan service, Findings findings) {
		Map<FilmSet, FilmStore> stores = new HashMap<>();
		for (FilmUse use : FilmUse.in(service)) {
			FilmStore store = stores.computeIfAbsent(use.films(), FilmStore::of);
			if (!store.stocks(use.thickness())) {
				findings.error(IssueCodes.FILM_NOT_STOCKED, use.place(), notStocked(use, store),
						nearest(use.thickness(), store.thicknesses()));
			} else if (!store.take(use.thickness())) {
				findings.error(IssueCodes.FILM_SHORT, use.place(),
						new Advice("No " + use.thickness() + " film is left in " + use.films().getName(),
								"the rows above use up what is in stock",
								"Use another thickness, order film, or correct the count in the stock"));
			}
		}
	}

	private static Advice notStocked(FilmUse use, FilmStore store) {
		return new Advice("Film " + use.films().getName() + " has no " + use.thickness(),
				"a shim is made of what is in stock",
				"Use " + nearest(use.thickness(), store.thicknesses()) + ", or add the thickness to the stock");
	}

	private static String nearest(Length wanted, List<Length> stocked) {
		return stocked.stream().min(Comparator.comparing((Length length) -> length.minus(wanted).abs())
				.thenComparing(Comparator.naturalOrder())).map(Length::toString).orElse("another film");
	}
}
