package padwright.language.ide.server;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

import padwright.language.shop.ShopFolder;

/** A shop on disk: a small one of our own, or a copy of the example. */
record TestShop(Path folder) {

	/** The test bundle is the working directory. */
	private static final Path EXAMPLE = Path.of("..", "..", "examples", "shop");

	static TestShop example(Path folder) throws IOException {
		for (Path source : files(EXAMPLE)) {
			Path target = folder.resolve(EXAMPLE.relativize(source).toString());
			Files.createDirectories(target.getParent());
			Files.copy(source, target);
		}
		return new TestShop(folder);
	}

	private static List<Path> files(Path folder) throws IOException {
		try (Stream<Path> files = Files.walk(folder)) {
			return files.filter(Files::isRegularFile).toList();
		}
	}

	/** A marked shop without documents. */
	static TestShop empty(Path folder) throws IOException {
		Files.createDirectories(folder);
		Files.createFile(folder.resolve(ShopFolder.MARKER));
		return new TestShop(folder);
	}

	Path file(String name) {
		return folder.resolve(name);
	}

	Path write(String name, String text) throws IOException {
		Path file = file(name);
		Files.createDirectories(file.getParent());
		return Files.writeString(file, text);
	}

	String text(String name) throws IOException {
		return Files.readString(file(name));
	}
}
