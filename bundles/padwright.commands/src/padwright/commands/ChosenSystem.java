package padwright.commands;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

import padwright.language.shop.ShopFinding;
import padwright.model.keysystem.KeySystem;
import padwright.model.plan.Document;

/**
 * A key system that a command was given as {@code FILE} or, where the file holds several, {@code FILE#NAME}.
 *
 * @param file as it was written
 */
record ChosenSystem(Path file, LoadedShop shop, KeySystem system) {

	/** How the parameter is described. */
	static final String DESCRIPTION = "A .keys file; with several systems FILE#NAME.";

	private static final char NAME_MARK = '#';

	/** @throws InputException if there is no one system of that name */
	static ChosenSystem of(String written) {
		int mark = written.lastIndexOf(NAME_MARK);
		Path file = Path.of(mark < 0 ? written : written.substring(0, mark));
		LoadedShop shop = LoadedShop.around(file);
		return new ChosenSystem(file, shop,
				choose(shop, mark < 0 ? Optional.empty() : Optional.of(written.substring(mark + 1))));
	}

	/** The findings of error level in the file. */
	List<ShopFinding> errors() {
		return shop.errors(shop.file());
	}

	private static KeySystem choose(LoadedShop shop, Optional<String> name) {
		if (shop.chosen().size() != 1) {
			throw new InputException("name one .keys file; there are " + shop.chosen().size() + " files here");
		}
		Path file = shop.file();
		shop.shop().whyUnreadable(file).ifPresent(why -> {
			throw new InputException(file, why);
		});
		List<KeySystem> systems =
				shop.shop().document(file).<List<KeySystem>>map(Document::getSystems).orElse(List.of());
		List<KeySystem> meant =
				systems.stream().filter(each -> name.isEmpty() || name.get().equals(each.getName())).toList();
		if (meant.size() != 1) {
			throw new InputException(file, systems.isEmpty() ? "holds no key system"
					: "holds " + systems.stream().map(KeySystem::getName).collect(Collectors.joining(", "))
							+ "; name one behind the file, as in FILE#" + systems.get(0).getName());
		}
		return meant.get(0);
	}
}
