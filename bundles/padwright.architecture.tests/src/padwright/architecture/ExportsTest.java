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
	/** Used by generated sources alone, which may not be there yet. */
	private static final String FOR_GENERATED = "padwright.language.services";

	/** Packages used, by who uses them. */
	private static final Map<String, Set<String>> USED = new TreeMap<>();

	@BeforeAll
	static void readSources() throws IOException {
		for (BundleManifest bundle : BundleManifest.allIn(BUNDLES)) {
			USED.put(bundle.name(), used(BUNDLES.resolve(bundle.name()).resolve("src")).collect(Collectors.toSet()));
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
		assertEquals(List.of(), bundle.exports().stream().filter(name -> !name.equals(FOR_GENERATED))
				.filter(name -> USED.entrySet().stream().noneMatch(user -> isOther(user.getKey(), bundle) && user.getValue().contains(name)))
				.toList());
	}

	/** Else a class is missing at run time where the compiler saw it. */
	@Test
	void allThatIsUsed() throws IOException {
		Set<String> exported = BundleManifest.allIn(BUNDLES).stream().flatMap(bundle -> bundle.exports().stream()).collect(Collectors.toSet());
		for (BundleManifest user : bundles()) {
			assertEquals(List.of(), USED.get(user.name()).stream()
					.filter(name -> !(name + ".").startsWith(user.name() + ".") && !exported.contains(name)).toList(), user.name());
		}
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
