package padwright.commands;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What the pages say that a command drew. */
final class PageWords {

	private static final Pattern SAID = Pattern.compile("<(?:text|title|desc)[^>]*>([^<]*)<");

	private PageWords() {
	}

	/** All pages of a folder, a line for each text. */
	static String in(Path folder) throws IOException {
		StringBuilder said = new StringBuilder();
		try (Stream<Path> pages = Files.list(folder)) {
			for (Path page : pages.filter(file -> file.toString().endsWith(".svg")).sorted().toList()) {
				said.append(SAID.matcher(Files.readString(page)).results().map(found -> found.group(1) + "\n")
						.collect(Collectors.joining()));
			}
		}
		return said.toString();
	}
}
