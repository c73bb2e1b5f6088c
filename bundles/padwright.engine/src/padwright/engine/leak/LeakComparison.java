package padwright.engine.leak;

import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * An instrument before and after work on its pads.
 *
 * @param before the leak before
 * @param after the leak after, of the same keys, measured alike
 */
public record LeakComparison(InstrumentLeak before, InstrumentLeak after) {

	/** One key before and after. */
	public record Row(KeyLeak before, KeyLeak after) {
	}

	/** @throws IllegalArgumentException if the testers or the keys differ, or a key stands twice */
	public LeakComparison {
		if (!before.tester().equals(after.tester())) {
			throw new IllegalArgumentException("leaks at different pressures cannot be compared");
		}
		if (!byKey(before).keySet().equals(byKey(after).keySet())) {
			throw new IllegalArgumentException("leaks of different keys cannot be compared");
		}
	}

	/** Every key, the worst before first. */
	public List<Row> rows() {
		Map<String, KeyLeak> later = byKey(after);
		return before.ranked().stream().map(leak -> new Row(leak, later.get(leak.key()))).toList();
	}

	private static Map<String, KeyLeak> byKey(InstrumentLeak leak) {
		return leak.ranked().stream().collect(Collectors.toMap(KeyLeak::key, Function.identity(), (first, second) -> {
			throw new IllegalArgumentException("key " + first.key() + " stands twice");
		}));
	}
}
