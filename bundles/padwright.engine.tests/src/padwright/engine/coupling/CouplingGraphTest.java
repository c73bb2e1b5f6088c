package padwright.engine.coupling;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;

import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Test;

import padwright.engine.length.Length;

class CouplingGraphTest {

	@Test
	void drivenKeysComeFirstAndTheGivenOrderStaysOtherwise() {
		CouplingGraph graph = graph(List.of("D", "E", "F", "Fs", "G", "A", "As"), "F>Fs", "E>Fs", "D>Fs", "F>As",
				"A>As");
		assertEquals(List.of("Fs", "D", "E", "G", "As", "F", "A"), graph.orderOfWork());
		assertEquals(List.of("D > Fs", "E > Fs", "F > Fs", "F > As", "A > As"),
				graph.couplingsInOrderOfWork().stream().map(Coupling::toString).toList());
	}

	@RepeatedTest(200)
	void orderOfWorkIsTopologicalStableAndLeavesNoKeyOut(RepetitionInfo repetition) {
		SplittableRandom random = new SplittableRandom(5_000 + repetition.getCurrentRepetition());
		List<String> keys = shuffledKeys(random, 20);
		Set<String> pairs = pairsDownhill(random, keys.size());
		CouplingGraph graph = graph(keys, pairs.toArray(String[]::new));
		List<String> order = graph.orderOfWork();
		assertEquals(new HashSet<>(keys), new HashSet<>(order));
		assertEquals(keys.size(), order.size());
		for (Coupling coupling : graph.couplings()) {
			assertTrue(order.indexOf(coupling.driven()) < order.indexOf(coupling.driver()), coupling::toString);
		}
		for (int i = 1; i < order.size(); i++) {
			assertNoNeedlessSwap(keys, graph, order.get(i - 1), order.get(i));
		}
	}

	@RepeatedTest(100)
	void aCircleIsNamedKeyByKey(RepetitionInfo repetition) {
		SplittableRandom random = new SplittableRandom(6_000 + repetition.getCurrentRepetition());
		List<String> keys = shuffledKeys(random, 12);
		Set<String> pairs = pairsDownhill(random, keys.size());
		int length = random.nextInt(2, 6);
		for (int i = 0; i < length; i++) {
			pairs.add("k" + i + ">k" + (i + 1) % length);
		}
		CircularCouplingException error = assertThrows(CircularCouplingException.class,
				() -> graph(keys, pairs.toArray(String[]::new)));
		List<String> circle = error.keys();
		assertTrue(circle.size() >= 2);
		assertEquals(circle.size(), new HashSet<>(circle).size());
		for (int i = 0; i < circle.size(); i++) {
			assertTrue(pairs.contains(circle.get(i) + ">" + circle.get((i + 1) % circle.size())), circle::toString);
		}
	}

	@Test
	void theMessageNamesTheCircleOnly() {
		CircularCouplingException error = assertThrows(CircularCouplingException.class,
				() -> graph(List.of("G", "A", "B", "C"), "G>A", "A>B", "B>C", "C>A"));
		assertEquals(List.of("A", "B", "C"), error.keys());
	}

	@Test
	void badGraphsAreRefused() {
		assertThrows(IllegalArgumentException.class, () -> graph(List.of("A", "A")));
		assertThrows(IllegalArgumentException.class, () -> graph(List.of("A", "B"), "A>C"));
		assertThrows(IllegalArgumentException.class, () -> graph(List.of("A", "B"), "A>B", "A>B"));
		CouplingGraph graph = graph(List.of("A", "B"), "A>B");
		assertThrows(IllegalArgumentException.class, () -> graph.upset("C", Length.thou("1")));
	}

	private static void assertNoNeedlessSwap(List<String> keys, CouplingGraph graph, String first, String second) {
		boolean swapped = keys.indexOf(first) > keys.indexOf(second);
		assertTrue(!swapped || graph.closedBy(second).contains(first), () -> first + " before " + second);
	}

	private static List<String> shuffledKeys(SplittableRandom random, int count) {
		List<String> keys = new ArrayList<>();
		for (int i = 0; i < count; i++) {
			keys.add(random.nextInt(keys.size() + 1), "k" + i);
		}
		return keys;
	}

	private static Set<String> pairsDownhill(SplittableRandom random, int keys) {
		Set<String> pairs = new HashSet<>();
		for (int i = 0; i < keys; i++) {
			int driver = random.nextInt(1, keys);
			pairs.add("k" + driver + ">k" + random.nextInt(driver));
		}
		return pairs;
	}

	static CouplingGraph graph(List<String> keys, String... pairs) {
		List<Coupling> couplings = new ArrayList<>();
		for (String pair : pairs) {
			String[] ends = pair.split(">");
			couplings.add(new Coupling(ends[0], ends[1], Adjuster.screw(ScrewThread.of("UNM 1.0"))));
		}
		return new CouplingGraph(keys, couplings);
	}
}
