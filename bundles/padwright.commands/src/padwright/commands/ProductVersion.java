package padwright.commands;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.CodeSource;
import java.util.Optional;
import java.util.jar.JarFile;
import java.util.jar.Manifest;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Which version of the program runs, from the manifest of the bundle of commands. */
final class ProductVersion {

	private static final Pattern OF_A_BUILD = Pattern.compile("(\\d+\\.\\d+\\.\\d+)\\.(\\d+)");

	private ProductVersion() {
	}

	/** The number and behind it when it was made, such as 0.1.0.202611291730; nothing outside a product. */
	static Optional<String> ofThisBuild() {
		return declared().filter(version -> OF_A_BUILD.matcher(version).matches());
	}

	/** In words for the user. */
	static String told() {
		String version = declared().orElse("of an unknown version");
		Matcher parts = OF_A_BUILD.matcher(version);
		return "padwright " + (parts.matches() ? parts.group(1) + " (" + parts.group(2) + ")" : version);
	}

	private static Optional<String> declared() {
		CodeSource source = ProductVersion.class.getProtectionDomain().getCodeSource();
		if (source == null) {
			return Optional.empty();
		}
		try {
			return Optional.ofNullable(manifest(Path.of(source.getLocation().toURI())))
					.map(manifest -> manifest.getMainAttributes().getValue("Bundle-Version"));
		} catch (IOException | URISyntaxException | RuntimeException elsewhere) {
			return Optional.empty();
		}
	}

	private static Manifest manifest(Path place) throws IOException {
		if (Files.isDirectory(place)) {
			try (var file = Files.newInputStream(place.resolve(JarFile.MANIFEST_NAME))) {
				return new Manifest(file);
			}
		}
		try (JarFile jar = new JarFile(place.toFile(), false)) {
			return jar.getManifest();
		}
	}
}
