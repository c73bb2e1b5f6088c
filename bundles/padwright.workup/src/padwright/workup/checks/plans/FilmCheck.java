package padwright.workup.checks.plans;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import padwright.engine.length.Length;
import padwright.model.stock.FilmSet;
import padwright.workup.checks.Advice;
import padwright.workup.checks.Check;
import padwright.workup.checks.Findings;
import padwright.workup.checks.IssueCodes;
import padwright.workup.service.ServicePlan;
import padwright.workup.solve.FilmStore;
import padwright.workup.solve.FilmUse;
import padwright.workup.words.Phrase;

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
			if (!use.back() && !store.stocks(use.thickness())) {
				Optional<Length> nearest = nearest(use.thickness(), store.thicknesses());
				findings.error(IssueCodes.FILM_NOT_STOCKED, use.place(),
						Advice.of(IssueCodes.FILM_NOT_STOCKED, use.films().getName(), use.thickness(),
								nearest.<Object>map(length -> length).orElse(Phrase.of("film-not-stocked.another"))),
						nearest.map(Length::toString).stream().toArray(String[]::new));
			} else if (!use.drawFrom(store)) {
				findings.error(IssueCodes.FILM_SHORT, use.place(),
						Advice.of(IssueCodes.FILM_SHORT, use.thickness(), use.films().getName()));
			}
		}
	}

	private static Optional<Length> nearest(Length wanted, List<Length> stocked) {
		return stocked.stream().min(Comparator.comparing((Length length) -> length.minus(wanted).abs())
				.thenComparing(Comparator.naturalOrder()));
	}
}
