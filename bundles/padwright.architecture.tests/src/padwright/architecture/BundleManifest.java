package padwright.architecture;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;

import org.eclipse.osgi.util.ManifestElement;
import org.osgi.framework.BundleException;
import org.osgi.framework.Constants;

/**
 * What a bundle of the source tree says of itself.
 *
 * @param name     symbolic name
 * @param requires bundles required, and the host of a fragment
 * @param imports  packages imported
 * @param exports  packages that others may use
 */
record BundleManifest(String name, List<String> requires, List<String> imports, List<String> exports) {

	/** Everything known by name, bundles and packages. */
	List<String> known() {
		return Stream.concat(requires.stream(), imports.stream()).toList();
	}

	boolean isTest() {
		return name.endsWith(".tests");
	}

	/** The manifests of all bundles in {@code folder}, which must not be empty of them. */
	static List<BundleManifest> allIn(Path folder) throws IOException {
		try (Stream<Path> children = Files.list(folder)) {
			return children.map(child -> child.resolve("META-INF/MANIFEST.MF")).filter(Files::isRegularFile).sorted()
					.map(BundleManifest::read).toList();
		}
	}

	private static BundleManifest read(Path file) {
		try (InputStream stream = Files.newInputStream(file)) {
			var headers = ManifestElement.parseBundleManifest(stream);
			return new BundleManifest(values(headers.get(Constants.BUNDLE_SYMBOLICNAME)).get(0),
					Stream.of(Constants.REQUIRE_BUNDLE, Constants.FRAGMENT_HOST)
							.flatMap(header -> values(headers.get(header)).stream()).toList(),
					values(headers.get(Constants.IMPORT_PACKAGE)), values(headers.get(Constants.EXPORT_PACKAGE)));
		} catch (IOException | BundleException e) {
			throw new IllegalStateException(file + " cannot be read", e);
		}
	}

	private static List<String> values(String header) {
		try {
			ManifestElement[] elements = ManifestElement.parseHeader("header", header);
			return elements == null ? List.of() : Arrays.stream(elements).map(ManifestElement::getValue).toList();
		} catch (BundleException e) {
			throw new IllegalStateException(e);
		}
	}
}
