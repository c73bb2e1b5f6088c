package padwright.architecture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A bundle shows only those of its packages that another bundle or an extension uses; the rest can change freely. */
class ExportsTest {

	private static final Path BUNDLES = Path.of("").toAbsolutePath().getParent();
	private static final String EXTENSION = "an extension";

	/** Packages used, by who uses them. */
	private static final Map<String, Set<String>> USED = new TreeMap<>();

	@BeforeAll
	static void readSources() throws IOException {
		for (BundleManifest bundle : BundleManifest.allIn(BUNDLES)) {
			Path folder = BUNDLES.resolve(bundle.name());
			USED.put(bundle.name(), Stream.concat(used(folder.resolve("src")), used(folder.resolve("src-gen"))).collect(Collectors.toSet()));
		}
		USED.put(EXTENSION, used(BUNDLES.resolveSibling("examples").resolve("plugin")).collect(Collectors.toSet()));
	}

	private static Stream<String> used(Path sources) throws IOException {
		return Files.isDirectory(sources) ? PackageGraph.of(sources).known().values().stream().flatMap(Set::stream) : Stream.empty();
	}

	static List<BundleManifest> bundles() throws IOException {
		return ArchitectureTest.bundles();
	}

	@ParameterizedTest
	@MethodSource("bundles")
	void onlyWhatIsUsed(BundleManifest bundle) {
		assertEquals(List.of(), bundle.exports().stream()
				.filter(name -> USED.entrySet().stream().noneMatch(user -> isOther(user.getKey(), bundle) && user.getValue().contains(name)))
				.toList());
	}

	/** Else a class is missing at run time where the compiler saw it. */
	@Test
	void allThatIsUsed() throws IOException {
		Set<String> exported = BundleManifest.allIn(BUNDLES).stream().flatMap(bundle -> bundle.exports().stream()).collect(Collectors.toSet());
		for (BundleManifest user : bundles()) {
			Set<String> own = packages(user.name());
			assertEquals(List.of(), USED.get(user.name()).stream().filter(name -> !own.contains(name) && !exported.contains(name)).toList(),
					user.name());
		}
	}

	private static Set<String> packages(String bundle) throws IOException {
		Path folder = BUNDLES.resolve(bundle);
		return Stream.concat(own(folder.resolve("src")), own(folder.resolve("src-gen"))).collect(Collectors.toSet());
	}

	private static Stream<String> own(Path sources) throws IOException {
		return Files.isDirectory(sources) ? PackageGraph.of(sources).known().keySet().stream() : Stream.empty();
	}

	/** A fragment with tests sees all of its host. */
	private static boolean isOther(String user, BundleManifest bundle) {
		return !user.equals(bundle.name()) && !user.equals(bundle.name() + ".tests");
	}

	@Test
	void theExtensionIsFound() {
		assertTrue(USED.get(EXTENSION).contains("padwright.workup.checks"));
	}
}
