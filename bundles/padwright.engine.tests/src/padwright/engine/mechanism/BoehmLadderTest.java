package padwright.engine.mechanism;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The lowest notes of a flute with closed G♯ and B foot, fingered as public charts have them: whatever hole is open
 * first from the head must speak the note that is played (common practice, no source).
 */
class BoehmLadderTest {

	private static final List<String> FROM_THE_HEAD = List.of("Tr2", "Tr1", "Cs", "C", "As", "A", "G", "G2", "Gs", "Fs",
			"F", "E", "D", "Ds", "LowCs", "LowC", "LowB");
	private static final Set<String> CLOSED = Set.of("Tr2", "Tr1", "Gs", "Ds");
	private static final Mechanism FLUTE = new Mechanism(
			FROM_THE_HEAD.stream().map(key -> new MovingKey(key, CLOSED.contains(key) ? Rest.CLOSED : Rest.OPEN))
					.toList(),
			FROM_THE_HEAD.stream().map(CoveredHole::under).toList(),
			List.of(FingerTouch.moving("T", "C"), FingerTouch.moving("TBb", "C", "As"), FingerTouch.moving("L1", "Cs"),
					FingerTouch.moving("L2", "A"), FingerTouch.moving("L3", "G"), FingerTouch.moving("L4", "Gs"),
					FingerTouch.moving("R1", "F"), FingerTouch.moving("R2", "E"), FingerTouch.moving("R3", "D"),
					FingerTouch.moving("R4", "Ds"), FingerTouch.moving("RCs", "LowCs"),
					FingerTouch.moving("RC", "LowC"), FingerTouch.moving("RB", "LowB")),
			List.of(KeyLink.closes("A", "As"), KeyLink.closes("G", "G2"), KeyLink.closes("F", "Fs"),
					KeyLink.closes("F", "As"), KeyLink.closes("E", "Fs"), KeyLink.closes("D", "Fs"),
					KeyLink.closes("LowC", "LowCs"), KeyLink.closes("LowB", "LowC")));

	@ParameterizedTest
	@CsvSource({ "T L1 L2 L3 R1 R2 R3 RB, ''", "T L1 L2 L3 R1 R2 R3 RC, LowB", "T L1 L2 L3 R1 R2 R3 RCs, LowC",
			"T L1 L2 L3 R1 R2 R3, LowCs", "T L1 L2 L3 R1 R2 R3 R4, Ds", "T L1 L2 L3 R1 R2 R4, D",
			"T L1 L2 L3 R1 R4, E", "T L1 L2 L3 R3 R4, F", "T L1 L2 L3 R4, Fs", "T L1 L2 L3 L4 R4, Gs",
			"T L1 L2 R4, G", "T L1 R1 R4, A", "TBb L1 R4, A", "T L1 R4, As", "L1 R4, C", "R4, Cs" })
	void theFirstOpenHoleIsTheNextRungOfTheLadder(String touches, String first) {
		Set<String> open = FLUTE.state(Pressing.of(touches.split(" "))).holes(HoleState.OPEN);
		assertEquals(first, open.stream().findFirst().orElse(""));
	}

	@Test
	void everyTouchAloneMovesWhatItIsFor() {
		List<String> moved = new ArrayList<>();
		FLUTE.touches().forEach(touch -> moved.add(touch.name() + "="
				+ String.join("+", FLUTE.state(Pressing.of(touch.name())).moved().keySet())));
		assertEquals(List.of("T=C", "TBb=C+As", "L1=Cs", "L2=As+A", "L3=G+G2", "L4=Gs", "R1=As+Fs+F", "R2=Fs+E",
				"R3=Fs+D", "R4=Ds", "RCs=LowCs", "RC=LowCs+LowC", "RB=LowCs+LowC+LowB"), moved);
	}
}
