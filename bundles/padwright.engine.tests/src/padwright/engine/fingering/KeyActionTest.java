package padwright.engine.fingering;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;

import padwright.engine.coupling.Adjuster;
import padwright.engine.coupling.Coupling;
import padwright.engine.coupling.CouplingGraph;

class KeyActionTest {

	/** On a Boehm flute F, E and D each also close F♯, F and A also close A♯ (common practice, no source). */
	private static final CouplingGraph BOEHM = graph(List.of("As", "A", "Gs", "G", "Fs", "F", "E", "D", "Ds"),
			"F>Fs", "E>Fs", "D>Fs", "F>As", "A>As");

	@Test
	void pressedOpenKeysCloseWithAllTheyDrive() {
		assertEquals(Set.of("Gs", "Ds", "F", "Fs", "As"), action().closedPads(List.of("F")));
		assertEquals(List.of("Gs", "Fs", "D", "Ds"), List.copyOf(action().closedPads(List.of("D"))));
	}

	@Test
	void pressedClosedKeysOpen() {
		assertEquals(Set.of("Gs"), action().closedPads(List.of("Ds")));
		assertEquals(Set.of("Gs", "Ds"), action().closedPads(List.of()));
	}

	@Test
	void aKeyClosedAtRestPassesNothingOn() {
		CouplingGraph graph = graph(List.of("A", "B", "C"), "A>B", "B>C");
		KeyAction action = new KeyAction(
				Map.of("A", RestPosture.OPEN, "B", RestPosture.CLOSED, "C", RestPosture.OPEN), graph);
		assertEquals(Set.of("A", "B"), action.closedPads(List.of("A")));
		assertEquals(Set.of(), action.closedPads(List.of("B")));
	}

	@Test
	void pressingOneMoreOpenKeyOpensNoPad() {
		SplittableRandom random = new SplittableRandom(81);
		List<String> open = BOEHM.keys().stream().filter(key -> !isClosedAtRest(key)).toList();
		for (int i = 0; i < 500; i++) {
			List<String> pressed = new ArrayList<>(BOEHM.keys());
			pressed.removeIf(key -> random.nextBoolean());
			Set<String> more = new HashSet<>(pressed);
			more.add(open.get(random.nextInt(open.size())));
			assertTrue(action().closedPads(more).containsAll(action().closedPads(pressed)));
		}
	}

	@Test
	void unknownOrMissingKeysAreRefused() {
		assertThrows(IllegalArgumentException.class, () -> action().closedPads(List.of("H")));
		assertThrows(IllegalArgumentException.class,
				() -> new KeyAction(Map.of("A", RestPosture.OPEN), graph(List.of("A", "B"))));
		assertThrows(IllegalArgumentException.class,
				() -> new KeyAction(Map.of("A", RestPosture.OPEN, "B", RestPosture.OPEN), graph(List.of("A"))));
	}

	private static KeyAction action() {
		Map<String, RestPosture> postures = new HashMap<>();
		BOEHM.keys().forEach(key -> postures.put(key, isClosedAtRest(key) ? RestPosture.CLOSED : RestPosture.OPEN));
		return new KeyAction(postures, BOEHM);
	}

	private static boolean isClosedAtRest(String key) {
		return key.equals("Gs") || key.equals("Ds");
	}

	private static CouplingGraph graph(List<String> keys, String... pairs) {
		return new CouplingGraph(keys, Stream.of(pairs).map(pair -> pair.split(">"))
				.map(ends -> new Coupling(ends[0], ends[1], Adjuster.cork(List.of()))).toList());
	}
}
