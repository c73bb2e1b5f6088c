package padwright.commands;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/**
 * A plan as a user names it: a file, and behind a {@code #} one plan of several in it, as in {@code may.plan#J049}.
 *
 * @param plan its name, where one is given
 */
record NamedPlan(Path file, Optional<String> plan) {

	/** A file whose own name has a {@code #} is that file. */
	static NamedPlan of(Path given) {
		String name = given.getFileName() == null ? "" : given.getFileName().toString();
		int sign = name.lastIndexOf('#');
		return sign <= 0 || Files.exists(given) ? new NamedPlan(given, Optional.empty())
				: new NamedPlan(given.resolveSibling(name.substring(0, sign)), Optional.of(name.substring(sign + 1)));
	}
}
