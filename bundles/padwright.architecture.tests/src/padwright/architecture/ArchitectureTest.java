package padwright.architecture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Layers know only what lies below them. Manifests are enough to judge by: neither the compiler nor Equinox lets a
 * bundle see what its manifest does not name.
 */
class ArchitectureTest {

	private static final Pattern WORKBENCH = Pattern.compile("org\\.eclipse\\.(ui|jface|e4\\.ui)\\b.*");
	private static final Pattern WINDOWS = Pattern.compile("org\\.eclipse\\.(ui|swt|jface|e4\\.ui)\\b.*");

	static List<BundleManifest> bundles() throws IOException {
		// Tests run in the folder of their own bundle.
		Path folder = Path.of("").toAbsolutePath().getParent();
		return BundleManifest.allIn(folder).stream().filter(bundle -> !bundle.isTest()).toList();
	}

	@Test
	void theBundlesAreFound() throws IOException {
		assertTrue(bundles().stream().map(BundleManifest::name).toList()
				.containsAll(List.of("padwright.engine", "padwright.commands")));
	}

	@ParameterizedTest
	@MethodSource("bundles")
	void everyBundleHasALayer(BundleManifest bundle) {
		assertTrue(Layers.MAY_KNOW.containsKey(bundle.name()), "give it a place in Layers");
	}

	@ParameterizedTest
	@MethodSource("bundles")
	void aLayerKnowsOnlyThoseBelow(BundleManifest bundle) {
		List<String> below = Layers.MAY_KNOW.getOrDefault(bundle.name(), List.of());
		assertEquals(List.of(), bundle.requires().stream().filter(ArchitectureTest::isOurs)
				.filter(required -> !below.contains(required)).toList());
	}

	/** By bundle only, so that the rule above sees all. */
	@ParameterizedTest
	@MethodSource("bundles")
	void ourPackagesAreNotImported(BundleManifest bundle) {
		assertEquals(List.of(), bundle.imports().stream().filter(ArchitectureTest::isOurs).toList());
	}

	@Test
	void onlyTheWorkbenchKnowsWindows() throws IOException {
		assertEquals(List.of(), bundles().stream().filter(bundle -> !bundle.name().equals(Layers.WORKBENCH))
				.filter(bundle -> !bundle.name().startsWith(Layers.WORDS_OF_THE_PLATFORM))
				.filter(bundle -> bundle.known().stream().anyMatch(
						(bundle.name().equals(Layers.VIEWS_BUNDLE) ? WORKBENCH : WINDOWS).asMatchPredicate()))
				.map(BundleManifest::name).toList());
	}

	@Test
	void theEngineKnowsOnlyTheJdkAndNumbers() throws IOException {
		assertEquals(List.of("org.hipparchus.core"), bundles().stream().filter(bundle -> bundle.name().equals("padwright.engine"))
				.flatMap(bundle -> bundle.known().stream()).toList());
	}

	private static boolean isOurs(String name) {
		return name.startsWith("padwright.") && !name.startsWith("padwright.fonts.");
	}
}
