package padwright.commands;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;

import padwright.language.files.UnreadableException;
import padwright.language.shop.ShopFolder;

/**
 * The files of a shop that a command was given.
 *
 * @param top the folder of the shop
 * @param chosen the files that are worked on
 * @param all the files that may name each other, the chosen ones too
 */
record ChosenFiles(Path top, Collection<Path> chosen, Collection<Path> all) {

	/**
	 * Files and folders by the shops around them.
	 *
	 * @param otherTexts what some files hold, by their real paths, whether or not they are on disk
	 */
	static List<ChosenFiles> in(List<Path> filesAndFolders, Map<Path, String> otherTexts) {
		Map<Path, Collection<Path>> chosenByShop = new TreeMap<>();
		for (Path given : filesAndFolders) {
			if (given.toString().isBlank()) {
				throw new InputException("an empty name is no file");
			}
			chosenByShop.computeIfAbsent(ShopFolder.around(given), top -> new TreeSet<>())
					.addAll(documents(ShopFolder.real(given), otherTexts));
		}
		return chosenByShop.entrySet().stream().map(shop -> new ChosenFiles(shop.getKey(), shop.getValue(),
				all(shop.getKey(), shop.getValue(), otherTexts))).toList();
	}

	/** A folder that is not marked as a shop may hold many; a file in it names only its neighbours. */
	private static Collection<Path> all(Path top, Collection<Path> chosen, Map<Path, String> otherTexts) {
		Collection<Path> all = new TreeSet<>(chosen);
		boolean marked = ShopFolder.isMarked(top);
		all.addAll(marked ? documentsBelow(top) : documentsBeside(top));
		otherTexts.keySet().stream().filter(file -> marked ? file.startsWith(top) : top.equals(file.getParent()))
				.forEach(all::add);
		return all;
	}

	private static List<Path> documents(Path given, Map<Path, String> otherTexts) {
		if (otherTexts.containsKey(given)) {
			return List.of(given);
		}
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
}
