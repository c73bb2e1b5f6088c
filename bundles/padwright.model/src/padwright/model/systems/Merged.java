package padwright.model.systems;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

import org.eclipse.emf.ecore.EObject;

import padwright.engine.length.Length;
import padwright.model.Lengths;
import padwright.model.Measure;
import padwright.model.keysystem.Change;
import padwright.model.keysystem.Titled;

/**
 * Something of a key system as it is in one system, after the changes that the system and those between it and its own
 * made. What a change leaves unsaid is inherited.
 *
 * @param <D> what it is defined as
 * @param <F> the features that definition and changes have in common
 */
public abstract class Merged<D extends Titled, F extends EObject> {

	private final D definition;
	private final List<F> newestFirst;

	Merged(D definition, List<F> newestFirst) {
		this.definition = definition;
		this.newestFirst = List.copyOf(newestFirst);
	}

	public final D definition() {
		return definition;
	}

	/** Its definition and the changes to it, the newest first. */
	public final List<F> features() {
		return newestFirst;
	}

	final List<F> withNewest(F change) {
		return Stream.concat(Stream.of(change), newestFirst.stream()).toList();
	}

	public final String name() {
		return definition.getName();
	}

	/** The label, or the name where there is none. */
	public final String label() {
		return first(features -> features instanceof Change change ? change.getLabel() : definition.getLabel())
				.orElse(name());
	}

	final <T> Optional<T> first(Function<F, T> feature) {
		for (F features : newestFirst) {
			T known = feature.apply(features);
			if (known != null) {
				return Optional.of(known);
			}
		}
		return Optional.empty();
	}

	final Optional<Length> length(Function<F, Measure> measure) {
		return first(features -> Lengths.of(measure.apply(features), features).orElse(null));
	}

	final <P extends EObject, T> Optional<T> part(Function<F, P> part, Function<P, T> feature) {
		return first(features -> Optional.ofNullable(part.apply(features)).map(feature).orElse(null));
	}

	final <P extends EObject> Optional<Length> length(Function<F, P> part, Function<P, Measure> measure) {
		return part(part, owner -> Lengths.of(measure.apply(owner), owner).orElse(null));
	}
}
