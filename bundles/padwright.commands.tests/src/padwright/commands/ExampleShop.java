package padwright.commands;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** A copy of the example shop that a test may change. */
record ExampleShop(Path folder) {

	/** The test bundle is the working directory. */
	private static final Path ORIGINAL = Path.of("..", "..", "examples", "shop");

	static ExampleShop copiedTo(Path folder) throws IOException {
		for (Path source : files(ORIGINAL)) {
			Path target = folder.resolve(ORIGINAL.relativize(source).toString());
			Files.createDirectories(target.getParent());
			Files.copy(source, target);
		}
		return new ExampleShop(folder);
	}

	static List<Path> files(Path folder) throws IOException {
		try (Stream<Path> files = Files.walk(folder)) {
			return files.filter(Files::isRegularFile).sorted().toList();
		}
	}

	Path plan(String name) {
		return folder.resolve("plans").resolve(name + ".plan");
	}
}
