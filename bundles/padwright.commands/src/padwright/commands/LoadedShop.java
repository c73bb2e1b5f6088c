package padwright.commands;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;

import padwright.language.files.UnreadableException;
import padwright.language.shop.Shop;
import padwright.language.shop.ShopFinding;
import padwright.language.shop.ShopFolder;
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
		Map<Path, Collection<Path>> chosenByShop = new TreeMap<>();
		for (Path given : filesAndFolders) {
			if (given.toString().isBlank()) {
				throw new InputException("an empty name is no file");
			}
			chosenByShop.computeIfAbsent(ShopFolder.around(given), top -> new TreeSet<>())
					.addAll(documents(ShopFolder.real(given)));
		}
		return chosenByShop.entrySet().stream().map(entry -> open(entry.getKey(), entry.getValue())).toList();
	}

	/** The shop around one file. */
	static LoadedShop around(Path file) {
		return around(List.of(file)).get(0);
	}

	private static LoadedShop open(Path top, Collection<Path> chosen) {
		Collection<Path> all = new TreeSet<>(chosen);
		all.addAll(ShopFolder.isMarked(top) ? documentsBelow(top) : documentsBeside(top));
		return new LoadedShop(Shop.open(Language.services(), all), chosen);
	}

	private static List<Path> documents(Path given) {
		if (Files.isDirectory(given)) {
			return documentsBelow(given);
		}
		if (!Files.exists(given)) {
			throw new InputException(given, "does not exist");
		}
		if (!ShopFolder.isDocument(given)) {
			throw new InputException(given, "is no .keys, .stock or .plan file");
		}
		return List.of(given);
	}

	/** A folder that is not marked as a shop may hold many; a file in it names only its neighbours. */
	private static List<Path> documentsBeside(Path folder) {
		try {
			return ShopFolder.documentsBeside(folder);
		} catch (UnreadableException reason) {
			throw new InputException(folder, reason.getMessage());
		}
	}

	private static List<Path> documentsBelow(Path folder) {
		try {
			return ShopFolder.documents(folder);
		} catch (UnreadableException reason) {
			throw new InputException(folder, reason.getMessage());
		}
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
