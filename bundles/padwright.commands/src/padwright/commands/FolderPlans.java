package padwright.commands;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import padwright.workup.service.ServicePlan;

/**
 * All plans of a folder.
 *
 * @param plans  at least one
 * @param status whether a file was left out
 */
record FolderPlans(List<ServicePlan> plans, int status) {

	/** The plans below {@code folder}; files that cannot be read are told on {@code err} and left out. */
	static FolderPlans in(Path folder, PrintWriter err) {
		List<ServicePlan> plans = new ArrayList<>();
		int status = ExitStatus.CLEAN;
		for (LoadedShop loaded : LoadedShop.around(List.of(folder))) {
			for (Path file : loaded.chosen()) {
				Optional<String> unreadable = loaded.shop().whyUnreadable(file);
				if (unreadable.isPresent()) {
					err.println(ShownPath.of(file) + " " + unreadable.get() + ": left out");
					status = ExitStatus.FINDINGS;
				} else {
					loaded.shop().document(file).ifPresent(
							document -> document.getPlans().stream().map(ServicePlan::new).forEach(plans::add));
				}
			}
		}
		if (plans.isEmpty()) {
			throw new InputException(folder, "holds no plan to tell from");
		}
		return new FolderPlans(plans, status);
	}
}
