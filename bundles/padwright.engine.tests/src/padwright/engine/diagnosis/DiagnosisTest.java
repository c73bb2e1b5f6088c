package padwright.engine.diagnosis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

import org.junit.jupiter.api.Test;

class DiagnosisTest {

	/** The worked example in the README of kaityo256/mhs_cpp: seven minimal hitting sets. */
	@Test
	void publishedMinimalHittingSets() {
		Diagnosis diagnosis = evenly(bad("2 4 6 7", "2 4 7 8", "2 3 7 8", "2 4 5 6"));
		assertEquals(sets("2", "3 4", "4 8", "6 8", "4 7", "5 7", "6 7"), new HashSet<>(pads(diagnosis)));
		assertEquals(7, diagnosis.suspects().size());
		assertEquals(Set.of("2"), pads(diagnosis).get(0));
		assertFalse(diagnosis.moreMayExist());
	}

	/** Reiter, A theory of diagnosis from first principles (1987), full adder; from memory, unverified. */
	@Test
	void reitersFullAdder() {
		Diagnosis diagnosis = evenly(bad("X1 X2", "X1 A2 O1"));
		assertEquals(sets("X1", "X2 A2", "X2 O1"), new HashSet<>(pads(diagnosis)));
		assertEquals(3, diagnosis.suspects().size());
	}

	@Test
	void goodNotesClearTheirPads() {
		TrialNotes notes = new TrialNotes(notes("bad", "G Fs F E", "G Fs F"), notes("good", "G", "Fs"));
		assertEquals(List.of(Set.of("F")), pads(Diagnosis.of(notes, PadWeights.EVEN)));
	}

	@Test
	void weightsBringAPadForward() {
		TrialNotes notes = bad("A B C");
		Diagnosis diagnosis = Diagnosis.of(notes, new PadWeights(Map.of("B", 12.0, "C", 3.0)));
		assertEquals(List.of(Set.of("B"), Set.of("C"), Set.of("A")), pads(diagnosis));
		assertEquals(12 / 16.0, diagnosis.suspects().get(0).share(), 1e-12);
	}

	@Test
	void theScaleOfTheWeightsDoesNotMatter() {
		TrialNotes notes = bad("A B C", "B C D", "A D");
		Diagnosis leaks = Diagnosis.of(notes, new PadWeights(Map.of("A", 2.0, "B", 8.0, "C", 4.0, "D", 2.0)));
		Diagnosis scaled = Diagnosis.of(notes, new PadWeights(Map.of("A", 0.5, "B", 2.0, "D", 0.5)));
		assertEquals(leaks, scaled);
	}

	@Test
	void aBadNoteWithAllPadsClearedIsAContradiction() {
		TrialNotes notes = new TrialNotes(notes("bad", "A B", "C D"), notes("good", "A", "B C", "A B"));
		Diagnosis diagnosis = Diagnosis.of(notes, PadWeights.EVEN);
		assertEquals(1, diagnosis.contradictions().size());
		UnexplainedNote contradiction = diagnosis.contradictions().get(0);
		assertEquals("bad0", contradiction.note());
		assertEquals(Map.of("A", List.of("good0", "good2"), "B", List.of("good1", "good2")),
				contradiction.clearedBy());
		assertEquals(List.of(Set.of("D")), pads(diagnosis));
	}

	@Test
	void withoutBadNotesNothingIsSuspect() {
		Diagnosis diagnosis = Diagnosis.of(new TrialNotes(List.of(), notes("good", "A")), PadWeights.EVEN);
		assertEquals(List.of(), diagnosis.suspects());
		assertTrue(diagnosis.nextNote(notes("next", "A", "B")).isEmpty());
	}

	@Test
	void limitsAreReported() {
		TrialNotes pairs = bad("A B", "C D", "E F");
		assertTrue(Diagnosis.of(pairs, PadWeights.EVEN, new SearchLimits(2, 10)).moreMayExist());
		Diagnosis some = Diagnosis.of(pairs, PadWeights.EVEN, new SearchLimits(3, 7));
		assertEquals(7, some.suspects().size());
		assertTrue(some.moreMayExist());
		Diagnosis all = Diagnosis.of(pairs, PadWeights.EVEN, new SearchLimits(3, 8));
		assertEquals(8, all.suspects().size());
		assertFalse(all.moreMayExist());
	}

	@Test
	void theNextNoteSplitsTheSuspectsInHalf() {
		Diagnosis diagnosis = evenly(bad("A B C D"));
		NextNote next = diagnosis.nextNote(notes("next", "A", "A B C", "C D", "A B", "A B C D")).orElseThrow();
		assertEquals("next2", next.note().note());
		assertEquals(0.5, next.chanceBad(), 1e-12);
		assertEquals(1, next.bits(), 1e-12);
	}

	@Test
	void aNoteThatWasTriedOrTellsNothingIsNotProposed() {
		Diagnosis diagnosis = evenly(bad("A B"));
		List<NoteFingering> useless = new ArrayList<>(notes("bad", "A"));
		useless.addAll(notes("next", "A B", "C"));
		assertTrue(diagnosis.nextNote(useless).isEmpty());
	}

	@Test
	void badInputIsRefused() {
		NoteFingering note = new NoteFingering("D4", Set.of("A"));
		assertThrows(IllegalArgumentException.class, () -> evenly(new TrialNotes(List.of(note), List.of(note))));
		assertThrows(IllegalArgumentException.class, () -> new PadWeights(Map.of("A", 0.0)));
		assertThrows(IllegalArgumentException.class, () -> new PadWeights(Map.of("A", Double.NaN)));
		assertThrows(IllegalArgumentException.class, () -> new SearchLimits(0, 1));
		assertThrows(IllegalArgumentException.class, () -> new SearchLimits(1, 0));
		String many = IntStream.range(0, 65).mapToObj(Integer::toString).collect(Collectors.joining(" "));
		assertThrows(IllegalArgumentException.class, () -> evenly(bad(many)));
	}

	private static Diagnosis evenly(TrialNotes notes) {
		return Diagnosis.of(notes, PadWeights.EVEN);
	}

	private static TrialNotes bad(String... pads) {
		return new TrialNotes(notes("bad", pads), List.of());
	}

	private static List<NoteFingering> notes(String name, String... pads) {
		return IntStream.range(0, pads.length)
				.mapToObj(i -> new NoteFingering(name + i, Set.of(pads[i].split(" ")))).toList();
	}

	private static Set<SortedSet<String>> sets(String... pads) {
		return Arrays.stream(pads).map(set -> new TreeSet<>(Set.of(set.split(" "))))
				.collect(Collectors.toSet());
	}

	private static List<SortedSet<String>> pads(Diagnosis diagnosis) {
		return diagnosis.suspects().stream().map(SuspectSet::pads).toList();
	}
}
