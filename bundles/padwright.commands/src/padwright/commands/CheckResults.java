package padwright.commands;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Locale;
import java.util.UUID;

import padwright.language.archive.ResultStore;

/** Where results of checks are kept: in the user's cache, one file for each shop, never in the shop itself. */
final class CheckResults {

	private CheckResults() {
	}

	/** Those of the shop in a folder; none outside a product, whose version would be unknown. */
	static ResultStore of(Path shop) {
		return ProductVersion.ofThisBuild().map(version -> ResultStore.open(file(shop), version + " " + language()))
				.orElseGet(ResultStore::none);
	}

	/** Results hold findings in words. */
	private static String language() {
		return Locale.getDefault(Locale.Category.DISPLAY).getLanguage();
	}

	private static Path file(Path shop) {
		String name = UUID.nameUUIDFromBytes(shop.toString().getBytes(StandardCharsets.UTF_8)).toString();
		return cache().resolve("padwright").resolve("check").resolve(name);
	}

	private static Path cache() {
		for (String variable : new String[] { "XDG_CACHE_HOME", "LOCALAPPDATA" }) {
			String folder = System.getenv(variable);
			if (folder != null && Path.of(folder).isAbsolute()) {
				return Path.of(folder);
			}
		}
		return Path.of(System.getProperty("user.home"), ".cache");
	}
}
