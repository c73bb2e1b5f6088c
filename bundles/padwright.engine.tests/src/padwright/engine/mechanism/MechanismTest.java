package padwright.engine.mechanism;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.Map;
import java.util.Set;

import org.junit.jupiter.api.Test;

import padwright.engine.mechanism.Clash.Kind;

class MechanismTest {

	/** A, then B and C in a row below it, all with one hole each; D stands closed. */
	private static final List<MovingKey> KEYS = List.of(open("A"), open("B"), open("C"), closed("D"));
	private static final List<CoveredHole> HOLES = List.of(CoveredHole.under("A"), CoveredHole.under("B"),
			CoveredHole.under("C"), CoveredHole.under("D"));
	private static final List<FingerTouch> TOUCHES = List.of(FingerTouch.moving("TA", "A"),
			FingerTouch.moving("TB", "B"), FingerTouch.moving("TC", "C"), FingerTouch.moving("TD", "D"));

	@Test
	void aPressedKeyTakesAlongWhatItCloses() {
		MechanismState state = with(KeyLink.closes("A", "B"), KeyLink.closes("B", "C")).state(Pressing.of("TA"));
		assertEquals(Set.of("A", "B", "C", "D"), state.holes(HoleState.CLOSED));
		assertEquals("[TA presses A, A closes B, B closes C]", state.moved().get("C").toString());
		assertEquals(List.of(), state.contradictions());
	}

	@Test
	void aKeyThatStandsClosedOpensWhenPressedAndWhenOpened() {
		assertEquals(Set.of("A", "B", "C", "D"), with().state(Pressing.of("TD")).holes(HoleState.OPEN));
		MechanismState state = with(KeyLink.opens("A", "D")).state(Pressing.of("TA"));
		assertEquals(Set.of("B", "C", "D"), state.holes(HoleState.OPEN));
	}

	@Test
	void aKeyThatIsKeptFromMovingPassesNothingOn() {
		Mechanism mechanism = with(KeyLink.opens("A", "D"), KeyLink.holds("B", "D"), KeyLink.closes("D", "C"));
		MechanismState state = mechanism.state(Pressing.of("TA", "TB"));
		assertEquals(Set.of("C"), state.holes(HoleState.OPEN));
		assertEquals("[D: TA presses A, A opens D; but TB presses B, B holds D]", state.held().toString());
		assertEquals(List.of(), state.contradictions());
	}

	@Test
	void whatHoldsAlsoClosesAnOpenKey() {
		Mechanism mechanism = with(KeyLink.holds("A", "B"), KeyLink.opens("C", "B"));
		assertEquals(Set.of("C"), mechanism.state(Pressing.of("TA")).holes(HoleState.OPEN));
		MechanismState both = mechanism.state(Pressing.of("TA", "TC"));
		assertEquals(Set.of(), both.holes(HoleState.OPEN));
		assertEquals(List.of(), both.contradictions());
	}

	@Test
	void aFingerDoesNotOpenWhatIsHeld() {
		MechanismState state = with(KeyLink.holds("A", "D")).state(Pressing.of("TA", "TD"));
		assertEquals("[D: TD presses D; but TA presses A, A holds D]", state.held().toString());
		assertEquals(List.of(), state.contradictions());
		assertEquals(Set.of("A", "D"), state.holes(HoleState.CLOSED));
	}

	@Test
	void whatHoldsSettlesADispute() {
		MechanismState state = with(KeyLink.opens("A", "D"), KeyLink.closes("B", "D"), KeyLink.holds("C", "D"))
				.state(Pressing.of("TA", "TB", "TC"));
		assertEquals("[D: TA presses A, A opens D; but TC presses C, C holds D]", state.held().toString());
		assertEquals(List.of(), state.contradictions());
	}

	@Test
	void openingWhatAnotherClosesIsAContradiction() {
		MechanismState state = with(KeyLink.opens("A", "D"), KeyLink.closes("B", "D")).state(Pressing.of("TA", "TB"));
		assertEquals(Kind.OPPOSED, state.contradictions().get(0).kind());
		assertEquals("D: TA presses A, A opens D; but TB presses B, B closes D", state.contradictions().get(0).toString());
		MechanismState onOpen = with(KeyLink.opens("A", "B")).state(Pressing.of("TA", "TB"));
		assertEquals("B: TB presses B; but TA presses A, A opens B", onOpen.contradictions().get(0).toString());
	}

	@Test
	void closingWhatStandsClosedDoesNothing() {
		MechanismState state = with(KeyLink.closes("A", "D")).state(Pressing.of("TA"));
		assertEquals(Set.of("A"), state.moved().keySet());
		assertEquals(List.of(), state.contradictions());
	}

	/** Of two keys that keep each other shut, the one pressed first would win. */
	@Test
	void keysThatKeepEachOtherShutAreACircle() {
		Mechanism mechanism = new Mechanism(List.of(closed("P"), closed("Q")),
				List.of(CoveredHole.under("P"), CoveredHole.under("Q")),
				List.of(FingerTouch.moving("TP", "P"), FingerTouch.moving("TQ", "Q")),
				List.of(KeyLink.holds("P", "Q"), KeyLink.holds("Q", "P")));
		assertEquals(List.of(), mechanism.state(Pressing.of("TP")).contradictions());
		MechanismState state = mechanism.state(Pressing.of("TP", "TQ"));
		assertEquals(Kind.CIRCULAR, state.contradictions().get(0).kind());
		assertEquals("P: P holds Q, Q holds P", state.contradictions().get(0).toString());
		assertEquals(Set.of("P", "Q"), state.holes(HoleState.CLOSED));
	}

	@Test
	void keysThatOnlyMoveEachOtherStayAtRest() {
		Mechanism mechanism = with(KeyLink.closes("A", "B"), KeyLink.closes("B", "A"));
		assertEquals(Set.of("C"), mechanism.state(Pressing.of("TC")).moved().keySet());
		assertEquals(Set.of("A", "B"), mechanism.state(Pressing.of("TB")).moved().keySet());
	}

	/** One octave key for two vents, of which the third finger chooses one (common practice, no source). */
	@Test
	void aConditionChoosesBetweenTwoVents() {
		Mechanism octaves = new Mechanism(List.of(open("Lever"), open("G"), closed("Neck"), closed("Body")),
				List.of(CoveredHole.under("Neck"), CoveredHole.under("Body"), CoveredHole.under("G")),
				List.of(FingerTouch.moving("Oct", "Lever"), FingerTouch.moving("L3", "G")),
				List.of(KeyLink.opens("Lever", "Neck"), KeyLink.holds("G", "Neck"),
						KeyLink.opens("Lever", "Body").when("G")));
		assertEquals(Set.of("G"), octaves.state(Pressing.of()).holes(HoleState.OPEN));
		assertEquals(Set.of("Neck", "G"), octaves.state(Pressing.of("Oct")).holes(HoleState.OPEN));
		assertEquals(Set.of("Body"), octaves.state(Pressing.of("Oct", "L3")).holes(HoleState.OPEN));
		assertEquals(Set.of(), octaves.state(Pressing.of("L3")).holes(HoleState.OPEN));
	}

	@Test
	void aConditionMayBeThatAKeyIsNotPressed() {
		Mechanism mechanism = with(KeyLink.opens("A", "D").unless("B"));
		assertEquals(Set.of("B", "C", "D"), mechanism.state(Pressing.of("TA")).holes(HoleState.OPEN));
		assertEquals(Set.of("C"), mechanism.state(Pressing.of("TA", "TB")).holes(HoleState.OPEN));
		MechanismState itself = with(KeyLink.opens("A", "D").unless("D")).state(Pressing.of("TA"));
		assertEquals("D: A opens D unless D", itself.contradictions().get(0).toString());
	}

	@Test
	void fingersCoverHolesAndTheOpeningsOfCups() {
		Mechanism mechanism = new Mechanism(List.of(open("Plate"), open("Ring"), open("Pad")),
				List.of(new CoveredHole("top", List.of(HoleCup.perforated("Plate"))), CoveredHole.fingerHole("low"),
						CoveredHole.under("Pad")),
				List.of(new FingerTouch("L1", List.of("Plate"), List.of("top")),
						new FingerTouch("R1", List.of("Ring"), List.of("low")), FingerTouch.moving("side", "Plate")),
				List.of(KeyLink.closes("Ring", "Pad")));
		assertEquals("{top=OPEN, low=OPEN, Pad=OPEN}", mechanism.state(Pressing.of()).holes().toString());
		assertEquals("{top=CLOSED, low=CLOSED, Pad=CLOSED}",
				mechanism.state(Pressing.of("L1", "R1")).holes().toString());
		assertEquals("{top=HALF, low=HALF, Pad=CLOSED}",
				mechanism.state(Pressing.of().withHalf("L1", "R1")).holes().toString());
		assertEquals("{top=HALF, low=OPEN, Pad=OPEN}", mechanism.state(Pressing.of("side")).holes().toString());
		assertEquals(Set.of("top", "low"), mechanism.state(Pressing.of().withHalf("L1", "R1")).sounding());
	}

	@Test
	void aHoleUnderTwoCupsIsClosedByEither() {
		Mechanism mechanism = new Mechanism(List.of(open("A"), open("B")),
				List.of(new CoveredHole("h", List.of(HoleCup.plain("A"), HoleCup.plain("B")))),
				List.of(FingerTouch.moving("TA", "A"), FingerTouch.moving("TB", "B")), List.of());
		assertEquals(Set.of("h"), mechanism.state(Pressing.of("TB")).holes(HoleState.CLOSED));
		assertEquals(Set.of("h"), mechanism.state(Pressing.of()).holes(HoleState.OPEN));
	}

	@Test
	void aKeyMayBeNamedInsteadOfATouch() {
		MechanismState state = with().state(new Pressing(Set.of(), Set.of(), Set.of("B")));
		assertEquals("[B is pressed]", state.moved().get("B").toString());
	}

	@Test
	void keysThatNoTouchReachesAreFound() {
		List<KeyLink> links = List.of(KeyLink.closes("A", "B"), KeyLink.closes("B", "C").when("D"),
				KeyLink.holds("A", "D"));
		Mechanism one = new Mechanism(KEYS, HOLES, List.of(FingerTouch.moving("TA", "A")), links);
		assertEquals(List.of("D"), one.unreachableKeys());
		assertEquals(List.of("A", "B", "C", "D"), new Mechanism(KEYS, HOLES, List.of(), links).unreachableKeys());
	}

	@Test
	void whatIsUnknownOrTwiceIsRefused() {
		assertThrows(IllegalArgumentException.class, () -> with().state(Pressing.of("TX")));
		assertThrows(IllegalArgumentException.class, () -> with().state(Pressing.of().withHalf("TX")));
		assertThrows(IllegalArgumentException.class, () -> Pressing.of("TA").withHalf("TA"));
		assertThrows(IllegalArgumentException.class, () -> with(KeyLink.closes("A", "X")));
		assertThrows(IllegalArgumentException.class, () -> with(KeyLink.closes("A", "B").when("X")));
		assertThrows(IllegalArgumentException.class, () -> with(KeyLink.closes("A", "B"), KeyLink.closes("A", "B")));
		assertThrows(IllegalArgumentException.class, () -> KeyLink.closes("A", "A"));
		assertThrows(IllegalArgumentException.class, () -> new FingerTouch("T", List.of(), List.of()));
		assertThrows(IllegalArgumentException.class,
				() -> new Mechanism(KEYS, List.of(CoveredHole.under("X")), List.of(), List.of()));
		assertThrows(IllegalArgumentException.class,
				() -> new Mechanism(List.of(open("A"), closed("A")), List.of(), List.of(), List.of()));
	}

	@Test
	void aStateListsEverythingInTheOrderOfTheMechanism() {
		MechanismState state = with(KeyLink.closes("C", "A")).state(Pressing.of("TC", "TD"));
		assertEquals(List.of("A", "C", "D"), List.copyOf(state.moved().keySet()));
		assertEquals(Map.of("A", HoleState.CLOSED, "B", HoleState.OPEN, "C", HoleState.CLOSED, "D", HoleState.OPEN),
				state.holes());
		assertEquals(List.of("A", "B", "C", "D"), List.copyOf(state.holes().keySet()));
	}

	private static Mechanism with(KeyLink... links) {
		return new Mechanism(KEYS, HOLES, TOUCHES, List.of(links));
	}

	private static MovingKey open(String name) {
		return new MovingKey(name, Rest.OPEN);
	}

	private static MovingKey closed(String name) {
		return new MovingKey(name, Rest.CLOSED);
	}
}
