package padwright.commands;

import java.nio.file.Path;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

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
 * @param planName of the plan that is meant, where its file holds several
 */
record LoadedShop(Shop shop, Collection<Path> chosen, Optional<String> planName) {

	/** The shops around files and folders, each with the files chosen in it. */
	static List<LoadedShop> around(List<Path> filesAndFolders) {
		return around(filesAndFolders, Map.of());
	}

	/** As {@link #around(List)}, with other texts for some files, by their real paths, than they hold. */
	static List<LoadedShop> around(List<Path> filesAndFolders, Map<Path, String> otherTexts) {
		return ChosenFiles.in(filesAndFolders, otherTexts).stream().map(files -> new LoadedShop(
				Shop.open(Language.services(), files.all(), otherTexts), files.chosen(), Optional.empty())).toList();
	}

	/** The shop around one file, or one plan of it as {@link NamedPlan} reads it. */
	static LoadedShop around(Path given) {
		NamedPlan named = NamedPlan.of(given);
		LoadedShop around = around(List.of(named.file())).get(0);
		return new LoadedShop(around.shop(), around.chosen(), named.plan());
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

	/** The plan that is named, or the one plan in the one file chosen. */
	ServicePlan plan() {
		if (chosen.size() != 1) {
			throw new InputException("name one .plan file; there are " + chosen.size() + " files here");
		}
		shop.whyUnreadable(file()).ifPresent(why -> {
			throw new InputException(file(), why);
		});
		List<Plan> plans = shop.document(file()).<List<Plan>>map(Document::getPlans).orElse(List.of());
		if (plans.isEmpty()) {
			throw new InputException(file(), "holds no plan");
		}
		return new ServicePlan(planName.isPresent() ? named(plans, planName.get()) : only(plans));
	}

	private Plan named(List<Plan> plans, String name) {
		return plans.stream().filter(plan -> name.equals(plan.getName())).findFirst().orElseThrow(
				() -> new InputException(file(), "holds no plan " + name + "; it holds " + names(plans)));
	}

	private Plan only(List<Plan> plans) {
		if (plans.size() > 1) {
			throw new InputException(file(), "holds several plans: " + names(plans) + ". Name one behind a #, as in "
					+ file().getFileName() + "#" + plans.get(0).getName());
		}
		return plans.get(0);
	}

	private static String names(List<Plan> plans) {
		return plans.stream().map(Plan::getName).filter(name -> name != null).collect(Collectors.joining(", "));
	}
}
