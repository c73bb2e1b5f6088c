package padwright.views.bench;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.IntStream;
import java.util.stream.Stream;

import padwright.views.Messages;

/**
 * Which key does what in bench mode. A key that writes a character is called by it, others by a name, as in
 * {@code PageDown}. Digits are leaves and cannot be given another meaning.
 *
 * @param actions by the names of their keys, in the order in which they were said
 */
public record BenchKeys(Map<String, BenchAction> actions) {

	/** Foot switches that can be set up send one of these. */
	private static final int FUNCTION_KEYS = 20;
	private static final List<String> NAMES = Stream.concat(
			Stream.of("Enter", "Backspace", "Space", "Tab", "Insert", "Delete", "Home", "End", "PageUp", "PageDown",
					"ArrowUp", "ArrowDown", "ArrowLeft", "ArrowRight"),
			IntStream.rangeClosed(1, FUNCTION_KEYS).mapToObj(number -> "F" + number)).toList();

	public BenchKeys {
		actions = Collections.unmodifiableMap(new LinkedHashMap<>(actions));
	}

	/**
	 * The keys that a user chose.
	 *
	 * @param said the names of the keys of an action, apart by blanks
	 * @throws IllegalArgumentException in the user's words, for a name that is none, a digit, or a key with two meanings
	 */
	public static BenchKeys of(Function<BenchAction, String> said) {
		Map<String, BenchAction> keys = new LinkedHashMap<>();
		for (BenchAction action : BenchAction.values()) {
			for (String name : said.apply(action).strip().split("\\s+")) {
				if (!name.isEmpty() && keys.put(known(name), action) != null) {
					throw new IllegalArgumentException(Messages.of("bench.keyTwice", name));
				}
			}
		}
		return new BenchKeys(keys);
	}

	private static String known(String name) {
		if (name.length() == 1 && !Character.isDigit(name.charAt(0))) {
			return name.toLowerCase(Locale.ROOT);
		}
		return NAMES.stream().filter(name::equalsIgnoreCase).findFirst()
				.orElseThrow(() -> new IllegalArgumentException(Messages.of("bench.noKey", name, String.join(", ", NAMES))));
	}

	/** What the keys do before the user says otherwise. */
	public static BenchKeys standard() {
		return of(BenchAction::firstKeys);
	}

	Optional<BenchAction> action(String key) {
		return Optional.ofNullable(actions.get(key));
	}

	/** The key of an action that was said first, for its button; empty where it has none. */
	String key(BenchAction action) {
		return actions.entrySet().stream().filter(entry -> entry.getValue() == action).map(Map.Entry::getKey)
				.findFirst().orElse("");
	}
}
