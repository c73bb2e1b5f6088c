package padwright.commands;

import java.nio.file.Path;

import padwright.language.shop.ShopFolder;

/** Paths as a user wrote or would write them: relative to the working directory where they lie below it. */
final class ShownPath {

	private ShownPath() {
	}

	static String of(Path file) {
		Path absolute = file.toAbsolutePath().normalize();
		Path here = ShopFolder.real(Path.of(""));
		return (absolute.startsWith(here) ? here.relativize(absolute) : absolute).toString();
	}
}
