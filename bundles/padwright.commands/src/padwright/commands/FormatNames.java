package padwright.commands;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

import padwright.exchange.AddedFormats;
import padwright.exchange.Format;

/** The names of all formats of documents, those of extensions behind the program's own. */
final class FormatNames extends ArrayList<String> {

	private static final long serialVersionUID = 1;

	FormatNames() {
		Arrays.stream(Format.values()).map(Format::extension).forEach(this::add);
		addAll(AddedFormats.installed().documents());
	}

	/** The name as it is known, whether it is written in capitals or not. */
	static Optional<String> known(String written) {
		return new FormatNames().stream().filter(name -> name.equalsIgnoreCase(written)).findFirst();
	}

	/** The format of a file by its name. */
	static Optional<String> ofFile(Path file) {
		String lower = file.toString().toLowerCase(Locale.ROOT);
		return new FormatNames().stream().filter(name -> lower.endsWith("." + name.toLowerCase(Locale.ROOT))).findFirst();
	}
}
