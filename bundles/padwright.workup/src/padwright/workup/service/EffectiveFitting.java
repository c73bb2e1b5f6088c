package padwright.workup.service;

import java.util.Optional;
import java.util.function.Function;

import org.eclipse.emf.ecore.EObject;

import padwright.model.Resolved;
import padwright.model.plan.Fitting;
import padwright.model.stock.Adhesive;
import padwright.model.stock.FilmSet;
import padwright.model.stock.Pad;
import padwright.model.stock.Backing;

/**
 * What is fitted into one cup. A key's own fitting replaces pad and backing disc of the plan's together, since they
 * belong together; film and glue it leaves unsaid are the plan's.
 *
 * @param own the key's fitting, or null
 * @param planned the plan's, or null
 */
public record EffectiveFitting(Fitting own, Fitting planned) {

	/** The fitting that says which pad, if any does; where a mistake about the pad is reported. */
	public Optional<Fitting> source() {
		return Optional.ofNullable(own == null ? planned : own);
	}

	public Optional<Pad> pad() {
		return source().flatMap(fitting -> Resolved.of(fitting.getPad()));
	}

	public Optional<Backing> backing() {
		return source().flatMap(fitting -> Resolved.of(fitting.getBacking()));
	}

	public Optional<FilmSet> films() {
		return inherited(Fitting::getFilms);
	}

	public Optional<Adhesive> adhesive() {
		return inherited(Fitting::getAdhesive);
	}

	private <T extends EObject> Optional<T> inherited(Function<Fitting, T> feature) {
		Optional<T> ofKey = present(own, feature);
		return ofKey.isPresent() ? ofKey : present(planned, feature);
	}

	private static <T extends EObject> Optional<T> present(Fitting fitting, Function<Fitting, T> feature) {
		return fitting == null ? Optional.empty() : Resolved.of(feature.apply(fitting));
	}
}
