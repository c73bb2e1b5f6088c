package padwright.commands;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

import padwright.language.archive.FactStore;
import padwright.language.archive.PlanReading;
import padwright.workup.learn.PlanFacts;
import padwright.workup.learn.PlanFactsFormat;
import padwright.workup.service.ServicePlan;

/**
 * What the plans of a folder teach, read with all processors.
 *
 * @param facts of at least one plan
 * @param status whether a file was left out
 */
record FolderFacts(List<PlanFacts> facts, int status) {

	/** Files that cannot be read are told on {@code err} and left out. */
	static FolderFacts in(Path folder, PrintWriter err) {
		return in(folder, FolderFacts::kept, err);
	}

	/** @param stores of what was taken before, by the folder of the shop */
	static FolderFacts in(Path folder, Function<Path, FactStore<PlanFacts>> stores, PrintWriter err) {
		List<PlanFacts> facts = new ArrayList<>();
		List<Path> leftOut = new ArrayList<>();
		for (ChosenFiles shop : ChosenFiles.in(List.of(folder), Map.of())) {
			PlanReading reading = new PlanReading(shop.top(), shop.all(), Language::another,
					Runtime.getRuntime().availableProcessors());
			FactStore<PlanFacts> store = stores.apply(shop.top());
			facts.addAll(reading.of(shop.chosen(), plan -> PlanFacts.of(new ServicePlan(plan)), store, (file, why) -> {
				err.println(ShownPath.of(file) + " " + why + ": left out");
				leftOut.add(file);
			}));
			save(store);
		}
		if (facts.isEmpty()) {
			throw new InputException(folder, "holds no plan to tell from");
		}
		return new FolderFacts(facts, leftOut.isEmpty() ? ExitStatus.CLEAN : ExitStatus.FINDINGS);
	}

	/** None outside a product, whose version would be unknown. */
	private static FactStore<PlanFacts> kept(Path shop) {
		return UserCache.version().map(version -> open(UserCache.file("learn", shop), version)).orElseGet(FactStore::none);
	}

	static FactStore<PlanFacts> open(Path file, String version) {
		return FactStore.open(file, version, PlanFactsFormat::read, PlanFactsFormat::write);
	}

	private static void save(FactStore<PlanFacts> store) {
		try {
			store.save();
		} catch (IOException noRoom) {
			// The next time takes longer, that is all.
		}
	}
}
