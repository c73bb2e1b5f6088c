package padwright.commands;

import java.nio.file.Path;
import java.util.Collection;
import java.util.List;
import java.util.Map;

import padwright.language.shop.Shop;
import padwright.language.shop.ShopFinding;
import padwright.model.plan.Document;
import padwright.model.plan.Plan;
import padwright.workup.checks.Severity;
import padwright.workup.service.ServicePlan;

/**
 * A shop with those of its files that a command was given.
 *
 * @param shop all files of the shop folder
 * @param chosen the files that are worked on
 */
record LoadedShop(Shop shop, Collection<Path> chosen) {

	/** The shops around files and folders, each with the files chosen in it. */
	static List<LoadedShop> around(List<Path> filesAndFolders) {
		return around(filesAndFolders, Map.of());
	}

	/** As {@link #around(List)}, with other texts for some files, by their real paths, than they hold. */
	static List<LoadedShop> around(List<Path> filesAndFolders, Map<Path, String> otherTexts) {
		return ChosenFiles.in(filesAndFolders, otherTexts).stream().map(files -> new LoadedShop(
				Shop.open(Language.services(), files.all(), otherTexts), files.chosen())).toList();
	}

	/** The shop around one file. */
	static LoadedShop around(Path file) {
		return around(List.of(file)).get(0);
	}

	/** The findings of error level in a file. */
	List<ShopFinding> errors(Path file) {
		return shop.findings(file).stream().filter(finding -> finding.severity() == Severity.ERROR).toList();
	}

	/** The findings of error level in the chosen plan and in all that it draws on. */
	List<ShopFinding> errors(ServicePlan plan) {
		return shop.files().stream().filter(other -> other.equals(file()) || PlanSources.of(plan).mayBe(shop, other))
				.flatMap(other -> errors(other).stream()).toList();
	}

	/** The file that was chosen, where there is just one. */
	Path file() {
		return chosen.iterator().next();
	}

	/** The one plan in the one file chosen. */
	ServicePlan plan() {
		if (chosen.size() != 1) {
			throw new InputException("name one .plan file; there are " + chosen.size() + " files here");
		}
		shop.whyUnreadable(file()).ifPresent(why -> {
			throw new InputException(file(), why);
		});
		List<Plan> plans = shop.document(file()).<List<Plan>>map(Document::getPlans).orElse(List.of());
		if (plans.size() != 1) {
			throw new InputException(file(),
					plans.isEmpty() ? "holds no plan" : "holds several plans; put each into a file of its own");
		}
		return new ServicePlan(plans.get(0));
	}
}
