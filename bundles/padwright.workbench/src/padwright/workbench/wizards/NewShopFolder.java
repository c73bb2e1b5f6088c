package padwright.workbench.wizards;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import padwright.language.files.SafeFile;
import padwright.language.shop.ShopFolder;
import padwright.language.start.FileName;
import padwright.language.start.ShopMark;
import padwright.language.start.StockText;
import padwright.workbench.shops.ExampleShop;

/** Makes the folder of a new shop: aside first, then in place in one move, so that no half of it is ever there. */
final class NewShopFolder {

	/** A whole flute, whose text says that its dimensions are invented. */
	private static final String STARTER_SYSTEM = "systems/boehm.keys";

	private NewShopFolder() {
	}

	/**
	 * Makes the folder.
	 *
	 * @param folder not there yet, or empty
	 * @param system whether there is a key system to begin with
	 * @param stock name of the stock list to begin with
	 * @throws IOException if it cannot be made; nothing of it is left then
	 */
	static void make(Path folder, boolean system, Optional<String> stock) throws IOException {
		Path aside = Files.createDirectory(folder.resolveSibling("." + folder.getFileName() + ".new"));
		try {
			for (String part : List.of("systems", "stock", "plans")) {
				Files.createDirectory(aside.resolve(part));
			}
			if (system) {
				ExampleShop.copy(STARTER_SYSTEM, aside);
			}
			if (stock.isPresent()) {
				write(aside.resolve("stock").resolve(FileName.of(stock.get(), "stock")), StockText.starter(stock.get()));
			}
			write(aside.resolve(ShopFolder.MARKER), ShopMark.TEXT);
			Files.deleteIfExists(folder);
			Files.move(aside, folder);
		} catch (IOException | IllegalArgumentException failed) {
			delete(aside);
			throw failed;
		}
	}

	private static void write(Path file, String text) throws IOException {
		SafeFile.write(file, text.getBytes(StandardCharsets.UTF_8));
	}

	private static void delete(Path folder) throws IOException {
		try (Stream<Path> all = Files.walk(folder)) {
			for (Path path : all.sorted(Comparator.reverseOrder()).toList()) {
				Files.delete(path);
			}
		}
	}
}
