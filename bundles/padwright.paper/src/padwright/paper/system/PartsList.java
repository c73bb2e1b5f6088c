package padwright.paper.system;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

import padwright.engine.length.Length;
import padwright.model.keysystem.Adjuster;
import padwright.model.keysystem.Bearing;
import padwright.model.keysystem.Coupling;
import padwright.model.systems.EffectiveKey;
import padwright.model.systems.EffectiveRod;
import padwright.model.systems.EffectiveSystem;
import padwright.paper.sheet.SheetList;
import padwright.paper.words.Messages;
import padwright.workup.parts.CouplingWords;
import padwright.workup.report.Figures;
import padwright.workup.words.LengthWords;

/** What a maker needs of each kind for one instrument: cups and pads by size, adjusters, rods, posts, springs. */
final class PartsList {

	private final EffectiveSystem system;
	private final List<List<String>> rows = new ArrayList<>();

	private PartsList(EffectiveSystem system) {
		this.system = system;
	}

	/** @param couplings in the order of their numbers */
	static SheetList of(EffectiveSystem system, List<Coupling> couplings) {
		PartsList list = new PartsList(system);
		list.cups();
		list.adjusters(couplings);
		list.rods();
		list.springs();
		return new SheetList(Messages.of("parts.title"), List.of(Messages.of("parts.count"), Messages.of("parts.part"),
				Messages.of("parts.size"), Messages.of("parts.for")), list.rows);
	}

	private void cups() {
		Map<Length, List<EffectiveKey>> bySize = new TreeMap<>();
		system.keys().forEach(key -> key.cupDiameter()
				.ifPresent(size -> bySize.computeIfAbsent(size, none -> new ArrayList<>()).add(key)));
		bySize.forEach((size, keys) -> add(keys.size(), Messages.of("parts.cup"), LengthWords.millimetres(size, 2), labels(keys)));
	}

	private static String labels(List<EffectiveKey> keys) {
		return keys.stream().map(EffectiveKey::label).collect(Collectors.joining(", "));
	}

	private void adjusters(List<Coupling> couplings) {
		Map<String, List<String>> numbers = new TreeMap<>();
		for (int index = 0; index < couplings.size(); index++) {
			Adjuster adjuster = couplings.get(index).getAdjuster();
			if (adjuster != null) {
				numbers.computeIfAbsent(CouplingWords.of(adjuster), none -> new ArrayList<>()).add(String.valueOf(index + 1));
			}
		}
		numbers.forEach((kind, of) -> add(of.size(), Messages.of("parts.adjuster"), kind,
				Messages.of(of.size() == 1 ? "parts.coupling" : "parts.couplings", String.join(", ", of))));
	}

	private void rods() {
		system.rods().forEach(rod -> add(1, Messages.of("parts.rod"), length(rod), rod.bearings().stream()
				.map(bearing -> label(bearing, system)).collect(Collectors.joining(", "))));
		long posts = system.rods().stream().filter(rod -> rod.from().isPresent() && rod.to().isPresent()).count() * 2;
		if (posts > 0) {
			add(posts, Messages.of("parts.post"), "", Messages.of("parts.posts"));
		}
	}

	/** What the trade calls the key that a rod carries. */
	static String label(Bearing bearing, EffectiveSystem system) {
		return system.key(bearing.getKey()).map(EffectiveKey::label).orElseGet(() -> bearing.getKey().getName());
	}

	private static String length(EffectiveRod rod) {
		return rod.from().flatMap(from -> rod.to().map(to -> Messages.of("parts.long", LengthWords.millimetres(to.minus(from), 2)))).orElse("");
	}

	private void springs() {
		List<EffectiveKey> sprung = system.keys().stream().filter(key -> key.spring().isPresent()).toList();
		sprung.stream().collect(Collectors.groupingBy(key -> key.spring().orElseThrow().stripTrailingZeros(), TreeMap::new,
				Collectors.toList())).forEach((grams, keys) -> add(keys.size(), Messages.of("parts.spring"),
						Messages.of("parts.grams", Figures.plain(grams), grams), labels(keys)));
	}

	private void add(long count, String part, String size, String where) {
		rows.add(List.of(String.valueOf(count), part, size, where));
	}
}
