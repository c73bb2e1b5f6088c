package padwright.architecture;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collection;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Which packages of a bundle's sources name which.
 *
 * @param known by package; a package does not know itself
 */
record PackageGraph(Map<String, Set<String>> known) {

	private static final Pattern PACKAGE = Pattern.compile("^package ([\\w.]+);", Pattern.MULTILINE);
	private static final Pattern IMPORT = Pattern.compile("^import (?:static )?(padwright[a-z_0-9.]*)\\.[A-Z]", Pattern.MULTILINE);

	/** By what the sources in a folder import; what is generated is left aside. */
	static PackageGraph of(Path sources) throws IOException {
		Map<String, Set<String>> known = new TreeMap<>();
		try (Stream<Path> files = Files.walk(sources)) {
			for (Path file : files.filter(one -> one.toString().endsWith(".java")).toList()) {
				String text = Files.readString(file);
				PACKAGE.matcher(text).results().map(found -> found.group(1)).forEach(own -> {
					Set<String> names = known.computeIfAbsent(own, none -> new TreeSet<>());
					IMPORT.matcher(text).results().map(found -> found.group(1)).filter(name -> !name.equals(own))
							.forEach(names::add);
				});
			}
		}
		return new PackageGraph(known);
	}

	/** The largest sets of packages in which each is known to each by some way, as their names with blanks between. */
	Set<String> circles() {
		return known.keySet().stream().map(this::around).filter(circle -> circle.size() > 1)
				.map(circle -> String.join(" ", circle)).collect(Collectors.toCollection(TreeSet::new));
	}

	private Set<String> around(String start) {
		return reachable(start).stream().filter(other -> reachable(other).contains(start))
				.collect(Collectors.toCollection(TreeSet::new));
	}

	private Set<String> reachable(String start) {
		Set<String> reached = new TreeSet<>();
		follow(known.getOrDefault(start, Set.of()), reached);
		return reached;
	}

	private void follow(Collection<String> names, Set<String> reached) {
		names.stream().filter(reached::add).forEach(name -> follow(known.getOrDefault(name, Set.of()), reached));
	}
}
