package padwright.architecture;

import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.MessageFormat;
import java.util.List;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Texts of our own in English, in a file that its translations lie beside.
 *
 * @param file from the folder of all bundles
 */
record WordFile(Path file) {

	private static final String END = ".properties";
	private static final Pattern TRANSLATION = Pattern.compile(".*_[a-z]{2}\\" + END);
	private static final Pattern PLACE = Pattern.compile("\\{(\\d+)");

	/** Those in packages; the platform reads those of a bundle's own folder itself. */
	static List<WordFile> allIn(Path bundles) throws IOException {
		try (Stream<Path> files = Files.find(bundles, Integer.MAX_VALUE,
				(file, attributes) -> isWords(bundles.relativize(file)))) {
			return files.map(bundles::relativize).sorted().map(WordFile::new).toList();
		}
	}

	private static boolean isWords(Path file) {
		String name = file.getFileName().toString();
		return isSource(file) && name.endsWith(END) && !TRANSLATION.matcher(name).matches();
	}

	/** Whether a file, by its path from the folder of all bundles, is a source of ours and of no test. */
	static boolean isSource(Path file) {
		return file.getNameCount() > 2 && file.getName(1).toString().equals("src")
				&& !file.getName(0).toString().endsWith(".tests");
	}

	/** The path of a source from the top of its packages. */
	static Path inside(Path source) {
		return source.subpath(2, source.getNameCount());
	}

	Path bundle() {
		return file.getName(0);
	}

	boolean isNamed(String name) {
		return file.getFileName().toString().equals(name + END);
	}

	/** What is in it, in English for an empty language. */
	Properties words(Path bundles, String language) throws IOException {
		String name = file.getFileName().toString();
		String ending = language.isEmpty() ? END : "_" + language + END;
		Properties words = new Properties();
		try (Reader text = Files.newBufferedReader(
				bundles.resolve(file).resolveSibling(name.substring(0, name.length() - END.length()) + ending))) {
			words.load(text);
		}
		return words;
	}

	/** The numbers of the places for arguments in a pattern; throws where it is none. */
	static Set<String> places(String pattern) {
		new MessageFormat(pattern);
		return PLACE.matcher(pattern).results().map(place -> place.group(1))
				.collect(Collectors.toCollection(TreeSet::new));
	}

	@Override
	public String toString() {
		return file.toString();
	}
}
