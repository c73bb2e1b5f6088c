package padwright.language;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

import padwright.language.files.UnreadableException;
import padwright.language.shop.ShopFolder;

/** The shops that ship as examples. */
public final class Examples {

	/** Seen from the folder of this bundle, which tests run in. */
	private static final Path ALL = Path.of("..", "..", "examples");

	/** The shop that holds the templates of instruments and rules. */
	public static final Path TEMPLATES = ALL.resolve("shop");

	private Examples() {
	}

	/** The folders of the example shops. */
	public static List<Path> shops() {
		try (Stream<Path> folders = Files.list(ALL)) {
			return folders.filter(Files::isDirectory).sorted().toList();
		} catch (IOException missing) {
			throw new UncheckedIOException(missing);
		}
	}

	/** The documents of a shop. */
	public static List<Path> documents(Path shop) {
		try {
			return ShopFolder.documents(shop);
		} catch (UnreadableException missing) {
			throw new AssertionError(missing);
		}
	}

	/** The documents of all example shops. */
	public static List<Path> documents() {
		return shops().stream().flatMap(shop -> documents(shop).stream()).toList();
	}

	/** The text of a file. */
	public static String text(Path file) {
		try {
			return Files.readString(file);
		} catch (IOException missing) {
			throw new UncheckedIOException(missing);
		}
	}

	/** An example shop in memory, one of its documents replaced by {@code text}. */
	public static TestShop with(Path replaced, String text) {
		Path shop = ShopFolder.around(replaced);
		TestShop loaded = new TestShop();
		for (Path file : documents(shop)) {
			boolean here = file.equals(replaced.toAbsolutePath().normalize()) || file.equals(replaced);
			loaded.with(name(file), here ? text : text(file));
		}
		return loaded;
	}

	/** The name of a document in a shop in memory. */
	public static String name(Path file) {
		return file.getFileName().toString();
	}
}
