package padwright.workup.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;

class KeyNotesTest {

	private final Map<String, List<String>> byKey = new LinkedHashMap<>();

	private void say(String note, String... keys) {
		Stream.of(keys).forEach(key -> byKey.merge(key, List.of(note), (some, more) -> Stream.concat(some.stream(), more.stream()).toList()));
	}

	@Test
	void whatGoesForEveryKeyIsSaidOnceAndLast() {
		say("no arm", "C", "D", "E", "F");
		say("open", "D");
		assertEquals(List.of("D: open", "every key: no arm"), KeyNotes.of(byKey));
	}

	@Test
	void whatGoesForNearlyEveryKeyNamesTheOthers() {
		say("hours", "C", "D", "E", "F");
		say("stiffness", "G", "A");
		assertEquals(List.of("G: stiffness", "A: stiffness", "all but G, A: hours"), KeyNotes.of(byKey));
	}

	@Test
	void whatGoesForFewOrForManyOfManyMoreIsSaidOfEach() {
		say("no arm", "C", "D", "E");
		assertEquals(List.of("C: no arm", "D: no arm", "E: no arm"), KeyNotes.of(byKey));
		say("hours", "F", "G", "A");
		assertEquals(6, KeyNotes.of(byKey).size());
		byKey.clear();
		say("hours", "C", "D", "E", "F");
		say("stiffness", "G", "A", "B");
		assertEquals(7, KeyNotes.of(byKey).size());
	}
}
