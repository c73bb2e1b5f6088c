package padwright.engine.diagnosis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.TreeSet;

import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;

/** Simulated instruments with pads that are known to leak: invented fingerings, made from a seed. */
class QuestioningTest {

	private static final int PADS = 30;

	@RepeatedTest(50)
	void askingOnFindsTheLeak(RepetitionInfo repetition) {
		SplittableRandom random = new SplittableRandom(10_000 + repetition.getCurrentRepetition());
		List<NoteFingering> notes = randomNotes(random, 200);
		String leaking = "p" + random.nextInt(PADS);
		List<NoteFingering> bad = new ArrayList<>();
		List<NoteFingering> good = new ArrayList<>();
		bad.add(notes.stream().filter(note -> note.closedPads().contains(leaking)).findFirst().orElseThrow());
		Optional<NextNote> next = Optional.empty();
		int asked = -1;
		Diagnosis diagnosis;
		do {
			next.ifPresent(found -> (found.note().closedPads().contains(leaking) ? bad : good).add(found.note()));
			diagnosis = Diagnosis.of(new TrialNotes(bad, good), PadWeights.EVEN);
			next = diagnosis.nextNote(notes);
			asked++;
		} while (next.isPresent());
		assertEquals(Set.of(leaking), diagnosis.suspects().get(0).pads());
		assertEquals(1, diagnosis.suspects().size());
		assertTrue(asked <= 12, "asked " + asked);
	}

	@RepeatedTest(50)
	void someSuspectsAreAlwaysAmongTheTrueLeaks(RepetitionInfo repetition) {
		SplittableRandom random = new SplittableRandom(11_000 + repetition.getCurrentRepetition());
		Set<String> leaking = Set.of("p" + random.nextInt(0, 10), "p" + random.nextInt(10, 20),
				"p" + random.nextInt(20, 30));
		List<NoteFingering> bad = new ArrayList<>();
		List<NoteFingering> good = new ArrayList<>();
		SuspectSet truth = new SuspectSet(new TreeSet<>(leaking), 1);
		randomNotes(random, 12).forEach(note -> (truth.spoils(note) ? bad : good).add(note));
		Diagnosis diagnosis = Diagnosis.of(new TrialNotes(bad, good), PadWeights.EVEN, new SearchLimits(4, 10_000));
		assertEquals(List.of(), diagnosis.contradictions());
		assertTrue(diagnosis.suspects().stream().anyMatch(set -> leaking.containsAll(set.pads())));
		assertEquals(1, diagnosis.suspects().stream().mapToDouble(SuspectSet::share).sum(), 1e-9);
	}

	private static List<NoteFingering> randomNotes(SplittableRandom random, int count) {
		List<NoteFingering> notes = new ArrayList<>();
		for (int i = 0; i < count; i++) {
			Set<String> closed = new HashSet<>();
			for (int pad = 0; pad < PADS; pad++) {
				if (random.nextInt(3) == 0) {
					closed.add("p" + pad);
				}
			}
			notes.add(new NoteFingering("note " + i, closed));
		}
		return notes;
	}
}
