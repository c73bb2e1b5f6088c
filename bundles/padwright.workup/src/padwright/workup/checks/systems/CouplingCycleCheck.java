package padwright.workup.checks.systems;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

import padwright.model.Resolved;
import padwright.model.keysystem.Key;
import padwright.model.keysystem.KeySystem;
import padwright.model.keysystem.KeySystemPackage;
import padwright.model.systems.EffectiveKey;
import padwright.model.systems.EffectiveSystem;
import padwright.workup.checks.Advice;
import padwright.workup.checks.Check;
import padwright.workup.checks.Findings;
import padwright.workup.checks.IssueCodes;
import padwright.workup.checks.Place;
import padwright.workup.words.Phrase;

/** Couplings do not run in a circle. */
public final class CouplingCycleCheck extends Check<KeySystem> {

	public CouplingCycleCheck() {
		super(KeySystem.class);
	}

	@Override
	protected void check(KeySystem system, Findings findings) {
		EffectiveSystem effective = EffectiveSystem.of(system);
		Set<EffectiveKey> settled = new HashSet<>();
		for (EffectiveKey key : effective.keys()) {
			circle(effective, key, new ArrayList<>(), settled)
					.ifPresent(circle -> report(system, circle, findings));
		}
	}

	/** The keys of a circle reached from {@code key}; each key is walked from once. */
	private static Optional<List<EffectiveKey>> circle(EffectiveSystem system, EffectiveKey key,
			List<EffectiveKey> path, Set<EffectiveKey> settled) {
		if (path.contains(key)) {
			return Optional.of(List.copyOf(path.subList(path.indexOf(key), path.size())));
		}
		if (!settled.add(key)) {
			return Optional.empty();
		}
		path.add(key);
		Optional<List<EffectiveKey>> found = key.closes().stream()
				.flatMap(coupling -> Resolved.of(coupling.getDriven()).flatMap(system::key).stream())
				.flatMap(driven -> circle(system, driven, path, settled).stream()).findFirst();
		path.remove(path.size() - 1);
		return found;
	}

	private static void report(KeySystem system, List<EffectiveKey> circle, Findings findings) {
		Phrase names = Stream.concat(circle.stream().skip(1), circle.stream().limit(1)).map(EffectiveKey::name).map(Phrase::plain)
				.reduce(Phrase.plain(circle.get(0).name()), (chain, next) -> Phrase.of("mechanism.closes", chain, next));
		Key first = circle.get(0).definition();
		Place place = first.eContainer() == system ? Place.of(first, KeySystemPackage.Literals.TITLED__NAME)
				: Place.of(system, KeySystemPackage.Literals.TITLED__NAME);
		findings.error(IssueCodes.COUPLING_CYCLE, place,
				Advice.of(IssueCodes.COUPLING_CYCLE, names));
	}
}
