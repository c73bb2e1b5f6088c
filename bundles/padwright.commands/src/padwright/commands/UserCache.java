package padwright.commands;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;

/** What is kept between commands: in the user's cache, one file of a kind for each shop, never in the shop itself. */
final class UserCache {

	private UserCache() {
	}

	/** What others may have written otherwise: which product, and in which language its words are; nothing outside a product. */
	static Optional<String> version() {
		return ProductVersion.ofThisBuild().map(version -> version + " " + Locale.getDefault(Locale.Category.DISPLAY).getLanguage());
	}

	/** @param kind of what is kept, the name of a folder */
	static Path file(String kind, Path shop) {
		String name = UUID.nameUUIDFromBytes(shop.toString().getBytes(StandardCharsets.UTF_8)).toString();
		return folder().resolve("padwright").resolve(kind).resolve(name);
	}

	private static Path folder() {
		for (String variable : new String[] { "XDG_CACHE_HOME", "LOCALAPPDATA" }) {
			String folder = System.getenv(variable);
			if (folder != null && Path.of(folder).isAbsolute()) {
				return Path.of(folder);
			}
		}
		return Path.of(System.getProperty("user.home"), ".cache");
	}
}
