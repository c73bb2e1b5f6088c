package padwright.architecture;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Packages of a bundle know each other one way only. */
class PackageCirclesTest {

	@TempDir
	private Path folder;

	static Set<String> bundles() throws IOException {
		Set<String> names = new TreeSet<>();
		ArchitectureTest.bundles().forEach(bundle -> names.add(bundle.name()));
		return names;
	}

	@ParameterizedTest
	@MethodSource("bundles")
	void none(String bundle) throws IOException {
		Path sources = Path.of("").toAbsolutePath().resolveSibling(bundle).resolve("src");
		assertEquals(Set.of(), Files.isDirectory(sources) ? PackageGraph.of(sources).circles() : Set.of());
	}

	@Test
	void aCircleIsFoundHoweverLong() throws IOException {
		write("a", "import padwright.b.One;");
		write("b", "import static padwright.c.One.one;");
		write("c", "import padwright.a.One;\nimport padwright.d.One;");
		write("d", "import padwright.d.Other;");
		assertEquals(Set.of("padwright.a padwright.b padwright.c"), PackageGraph.of(folder).circles());
	}

	private void write(String name, String imports) throws IOException {
		Files.writeString(Files.createDirectories(folder.resolve(name)).resolve("One.java"),
				"package padwright." + name + ";\n\n" + imports + "\n\nclass One {\n}\n");
	}
}
