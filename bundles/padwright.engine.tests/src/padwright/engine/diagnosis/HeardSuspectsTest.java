package padwright.engine.diagnosis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;

class HeardSuspectsTest {

	private static final Ear EAR = new Ear(1, 0.25, 0.02);
	private static final NoteFingering LOW = new NoteFingering("low", Set.of("A", "B"));
	private static final NoteFingering HIGH = new NoteFingering("high", Set.of("A", "B"));

	/** Bayes' rule written out for two pads, two notes, and one size of leak each. */
	@Test
	void oneLeakIsWeighedByBayesRule() {
		HeardLeaks heard = heard(Map.of("low", Map.of("A", 0.3, "B", 0.05), "high", Map.of("A", 0.1, "B", 0.2)),
				Map.of("A", List.of(1.0), "B", List.of(2.0)));
		Diagnosis found = HeardSuspects.of(new TrialNotes(List.of(LOW), List.of(HIGH)),
				new PadWeights(Map.of("A", 1.0, "B", 3.0)), heard, new SearchLimits(1, 10)).diagnosis();
		double a = 0.25 * bad(0.3) * (1 - bad(0.1));
		double b = 0.75 * bad(0.1) * (1 - bad(0.4));
		assertEquals(Set.of("A"), found.suspects().get(0).pads());
		assertEquals(a / (a + b), found.suspects().get(0).share(), 1e-12);
		assertEquals(b / (a + b), found.suspects().get(1).share(), 1e-12);
	}

	/** A pad that closes in a note without weakening it is cleared by nothing that is heard there. */
	@Test
	void aGoodNoteClearsOnlyPadsThatWouldBeHeardInIt() {
		HeardLeaks heard = heard(Map.of("low", Map.of("A", 1.0, "B", 1.0), "high", Map.of("A", 1.0, "B", 0.001)), Map.of());
		Diagnosis found = HeardSuspects
				.of(new TrialNotes(List.of(LOW), List.of(HIGH)), PadWeights.EVEN, heard, SearchLimits.USUAL).diagnosis();
		assertEquals(Set.of("B"), found.suspects().get(0).pads());
		assertTrue(found.suspects().get(0).share() > 0.9, found.toString());
	}

	/** Where every leak is loud in every note that closes its pad, and ears are sure, logic is all there is. */
	@Test
	void loudLeaksAreLogic() {
		for (int seed = 0; seed < 40; seed++) {
			TrialNotes notes = randomNotes(new Random(seed));
			Map<String, Map<String, Double>> loud = new LinkedHashMap<>();
			Stream.concat(notes.bad().stream(), notes.good().stream()).forEach(note -> loud.put(
					note.note(), note.closedPads().stream().collect(Collectors.toMap(pad -> pad, pad -> 1000.0))));
			Diagnosis logical = Diagnosis.of(notes, PadWeights.EVEN, new SearchLimits(2, 100));
			HeardLeaks heard = new HeardLeaks(loud, Map.of(), new Ear(1, 0.01, 0));
			Diagnosis found = HeardSuspects.of(notes, PadWeights.EVEN, heard, new SearchLimits(2, 100)).diagnosis();
			if (logical.contradictions().isEmpty()) {
				assertEquals(shares(logical), shares(found), "seed " + seed);
			}
		}
	}

	/** Sets that are less likely than one in a hundred are not told of; none is in these small cases. */
	private static Map<Set<String>, Long> shares(Diagnosis found) {
		return found.suspects().stream()
				.collect(Collectors.toMap(SuspectSet::pads, set -> Math.round(set.share() * 1e6)));
	}

	@Test
	void twoLeaksAreFound() {
		NoteFingering third = new NoteFingering("third", Set.of("C"));
		HeardLeaks heard = heard(Map.of("low", Map.of("A", 1.0), "high", Map.of("B", 1.0), "third", Map.of("C", 1.0)),
				Map.of());
		Diagnosis found = HeardSuspects.of(new TrialNotes(List.of(LOW, HIGH), List.of(third)), PadWeights.EVEN, heard,
				SearchLimits.USUAL).diagnosis();
		assertEquals(Set.of("A", "B"), found.suspects().get(0).pads());
	}

	@Test
	void aBadNoteThatNothingWeakensIsAContradiction() {
		HeardLeaks heard = heard(Map.of("low", Map.of("A", 0.5), "high", Map.of("A", 0.6)),
				Map.of("A", List.of(3.0)));
		Diagnosis found = HeardSuspects.of(new TrialNotes(List.of(LOW),
				List.of(HIGH, new NoteFingering("same", HIGH.closedPads()))), PadWeights.EVEN,
				heard(Map.of("low", Map.of("A", 0.001), "high", Map.of("A", 0.6), "same", Map.of("A", 0.6)), heard.sizes()),
				SearchLimits.USUAL).diagnosis();
		assertEquals(List.of(new UnexplainedNote("low", new TreeMap<>(Map.of("A", List.of("high", "same"))))),
				found.contradictions());
	}

	/** A note that was played again is judged anew: Bayes' rule with its chance twice, and once each way. */
	@Test
	void aNotePlayedAgainCountsAgain() {
		HeardLeaks heard = heard(Map.of("low", Map.of("A", 0.3, "B", 0.1)), Map.of("A", List.of(1.0), "B", List.of(1.0)));
		Diagnosis found = HeardSuspects.of(new TrialNotes(List.of(LOW, LOW), List.of(LOW)), PadWeights.EVEN, heard,
				new SearchLimits(1, 10)).diagnosis();
		double a = bad(0.3) * bad(0.3) * (1 - bad(0.3));
		double b = bad(0.1) * bad(0.1) * (1 - bad(0.1));
		assertEquals(a / (a + b), share(found, "A"), 1e-12);
	}

	private static double share(Diagnosis found, String pad) {
		return found.suspects().stream().filter(set -> set.pads().equals(Set.of(pad))).findFirst().orElseThrow().share();
	}

	/** One that was tried is asked for again where it tells most, until little is left to be told. */
	@Test
	void aNoteThatTellsMostIsAskedForAgain() {
		HeardLeaks heard = heard(Map.of("low", Map.of("A", 1.0, "B", 0.1)), Map.of("A", List.of(1.0), "B", List.of(1.0)));
		List<NoteFingering> bad = new ArrayList<>(List.of(LOW));
		HeardSuspects found = HeardSuspects.of(new TrialNotes(bad, List.of()), PadWeights.EVEN, heard,
				new SearchLimits(1, 10));
		assertEquals("low", found.nextNote(List.of(LOW)).orElseThrow().note().note());
		for (int more = 0; more < 20; more++) {
			bad.add(LOW);
		}
		found = HeardSuspects.of(new TrialNotes(bad, List.of()), PadWeights.EVEN, heard, new SearchLimits(1, 10));
		assertTrue(found.nextNote(List.of(LOW)).isEmpty(), "nothing is left to be told");
	}

	/** The next note parts the two suspects; one in which both are heard alike tells nothing. */
	@Test
	void theNextNoteTellsMost() {
		NoteFingering alike = new NoteFingering("alike", Set.of("A", "B"));
		NoteFingering parting = new NoteFingering("parting", Set.of("A"));
		HeardLeaks heard = heard(Map.of("low", Map.of("A", 1.0, "B", 1.0), "alike", Map.of("A", 1.0, "B", 1.0),
				"parting", Map.of("A", 1.0)), Map.of("A", List.of(1.0), "B", List.of(1.0)));
		HeardSuspects found = HeardSuspects.of(new TrialNotes(List.of(LOW), List.of()), PadWeights.EVEN, heard,
				new SearchLimits(1, 10));
		NextNote next = found.nextNote(List.of(LOW, alike, parting)).orElseThrow();
		assertEquals("parting", next.note().note());
		assertEquals(0.5, next.chanceBad(), 0.01);
		assertEquals(1 - (entropy(bad(0)) + entropy(bad(1))) / 2, next.bits(), 0.01);
		assertTrue(found.nextNote(List.of(LOW, alike)).isEmpty());
	}

	@Test
	void anUnknownNoteIsRefused() {
		TrialNotes notes = new TrialNotes(List.of(LOW), List.of());
		HeardLeaks nothing = heard(Map.of(), Map.of());
		assertThrows(IllegalArgumentException.class,
				() -> HeardSuspects.of(notes, PadWeights.EVEN, nothing, SearchLimits.USUAL));
		assertThrows(IllegalArgumentException.class, () -> heard(Map.of("low", Map.of("A", -0.1)), Map.of()));
		assertThrows(IllegalArgumentException.class, () -> heard(Map.of(), Map.of("A", List.of())));
		assertThrows(IllegalArgumentException.class, () -> heard(Map.of(), Map.of("A", List.of(0.0))));
		assertThrows(IllegalArgumentException.class, () -> new Ear(0, 1, 0));
	}

	@Test
	void anEarHearsMoreOfMore() {
		assertEquals(0.5, EAR.chanceBad(1), 1e-12);
		assertEquals(0.02, EAR.chanceBad(-20), 1e-9);
		assertEquals(0.98, EAR.chanceBad(60), 1e-9);
	}

	private static HeardLeaks heard(Map<String, Map<String, Double>> weakening, Map<String, List<Double>> sizes) {
		return new HeardLeaks(weakening, sizes, EAR);
	}

	private static double bad(double lost) {
		return 0.02 + 0.96 / (1 + Math.exp((1 - 20 * Math.log10(1 + lost)) / 0.25));
	}

	private static double entropy(double chance) {
		return -(chance * Math.log(chance) + (1 - chance) * Math.log(1 - chance)) / Math.log(2);
	}

	private static TrialNotes randomNotes(Random random) {
		List<NoteFingering> notes = new ArrayList<>();
		for (int note = 0; note < 6; note++) {
			Set<String> closed = IntStream.range(0, 5).filter(pad -> random.nextBoolean())
					.mapToObj(pad -> "pad" + pad).collect(Collectors.toCollection(TreeSet::new));
			if (!closed.isEmpty()) {
				notes.add(new NoteFingering("note" + note, closed));
			}
		}
		int bad = 1 + random.nextInt(2);
		return new TrialNotes(notes.subList(0, bad), notes.subList(bad, notes.size()));
	}
}
