package padwright.commands;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

import padwright.language.archive.PlanReading;
import padwright.workup.learn.PlanFacts;
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
		List<PlanFacts> facts = new ArrayList<>();
		List<Path> leftOut = new ArrayList<>();
		for (ChosenFiles shop : ChosenFiles.in(List.of(folder), Map.of())) {
			PlanReading reading = new PlanReading(shop.top(), shop.all(), Language::another,
					Runtime.getRuntime().availableProcessors());
			facts.addAll(reading.of(shop.chosen(), plan -> PlanFacts.of(new ServicePlan(plan)), (file, why) -> {
				err.println(ShownPath.of(file) + " " + why + ": left out");
				leftOut.add(file);
			}));
		}
		if (facts.isEmpty()) {
			throw new InputException(folder, "holds no plan to tell from");
		}
		return new FolderFacts(facts, leftOut.isEmpty() ? ExitStatus.CLEAN : ExitStatus.FINDINGS);
	}
}
