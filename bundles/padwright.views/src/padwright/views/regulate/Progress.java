package padwright.views.regulate;

import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Which couplings of a plan are regulated.
 *
 * @param done their ids, as in {@code F > Fs}, in the order in which they were ticked off
 */
public record Progress(Set<String> done) {

	public Progress {
		done = Collections.unmodifiableSet(new LinkedHashSet<>(done));
	}

	/** Nothing is done. */
	public static Progress none() {
		return new Progress(Set.of());
	}

	/** What {@link #toText} wrote; blank lines do not count. */
	public static Progress of(String text) {
		return new Progress(text.lines().map(String::strip).filter(line -> !line.isEmpty())
				.collect(Collectors.toCollection(LinkedHashSet::new)));
	}

	public boolean isDone(String id) {
		return done.contains(id);
	}

	/** With one coupling ticked off, or no longer. */
	public Progress with(String id, boolean isDone) {
		Set<String> next = new LinkedHashSet<>(done);
		if (isDone) {
			next.add(id);
		} else {
			next.remove(id);
		}
		return new Progress(next);
	}

	/** One coupling a line, to be kept. */
	public String toText() {
		return done.stream().map(id -> id + "\n").collect(Collectors.joining());
	}
}
