package padwright.engine.mechanism;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Test;

class MechanismPropertiesTest {

	private static final int KEYS = 7;

	@RepeatedTest(300)
	void withoutCirclesTheOneStateThatBearsItselfOutIsFound(RepetitionInfo repetition) {
		RandomMechanism random = new RandomMechanism(1_000 + repetition.getCurrentRepetition(), KEYS);
		Mechanism mechanism = random.any(8, true);
		Set<String> touches = random.touches();
		MechanismState state = mechanism.state(Pressing.of(touches));
		List<Set<String>> stable =
				new ExhaustiveMechanism(mechanism, RandomMechanism.keysOf(touches)).stableStates();
		assertEquals(List.of(new TreeSet<>(state.moved().keySet())), stable);
	}

	@RepeatedTest(600)
	void whatIsFoundInCirclesHoldsInEveryStateThatBearsItselfOut(RepetitionInfo repetition) {
		RandomMechanism random = new RandomMechanism(2_000 + repetition.getCurrentRepetition(), KEYS);
		Mechanism mechanism = random.any(12, false);
		Set<String> touches = random.touches();
		MechanismState state = mechanism.state(Pressing.of(touches));
		List<Set<String>> stable =
				new ExhaustiveMechanism(mechanism, RandomMechanism.keysOf(touches)).stableStates();
		stable.forEach(each -> assertTrue(each.containsAll(state.moved().keySet())));
		if (!isCircular(state)) {
			assertEquals(List.of(new TreeSet<>(state.moved().keySet())), stable);
		}
	}

	/** Else the two tests above would not have met what they are for. */
	@Test
	void randomMechanismsMeetEveryKindOfClash() {
		Set<Clash.Kind> met = new TreeSet<>();
		for (int seed = 2_001; seed <= 2_600; seed++) {
			RandomMechanism random = new RandomMechanism(seed, KEYS);
			Mechanism mechanism = random.any(12, false);
			mechanism.state(Pressing.of(random.touches())).clashes().forEach(clash -> met.add(clash.kind()));
		}
		assertEquals(Set.of(Clash.Kind.values()), met);
	}

	@RepeatedTest(100)
	void theOrderOfThingsDoesNotMatter(RepetitionInfo repetition) {
		RandomMechanism random = new RandomMechanism(3_000 + repetition.getCurrentRepetition(), KEYS);
		Mechanism mechanism = random.any(12, false);
		Set<String> touches = random.touches();
		MechanismState state = mechanism.state(Pressing.of(touches));
		assertEquals(state, mechanism.state(Pressing.of(random.shuffled(List.copyOf(touches)))));
		Mechanism otherOrder = new Mechanism(random.shuffled(mechanism.keys()), random.shuffled(mechanism.holes()),
				random.shuffled(mechanism.touches()), random.shuffled(mechanism.links()));
		MechanismState other = otherOrder.state(Pressing.of(touches));
		assertEquals(state.moved().keySet(), other.moved().keySet());
		assertEquals(Map.copyOf(state.holes()), Map.copyOf(other.holes()));
		assertEquals(keysIn(state.held()), keysIn(other.held()));
		assertEquals(isCircular(state), isCircular(other));
	}

	@RepeatedTest(100)
	void whereKeysOnlyCloseOneMoreTouchOpensNothing(RepetitionInfo repetition) {
		RandomMechanism random = new RandomMechanism(4_000 + repetition.getCurrentRepetition(), KEYS);
		Mechanism mechanism = random.closing(10);
		Set<String> touches = random.touches();
		Set<String> closed = closed(mechanism, touches);
		Set<String> more = new TreeSet<>(touches);
		more.add("T" + random.next(KEYS));
		assertTrue(closed(mechanism, more).containsAll(closed));
		assertEquals(List.of(), mechanism.state(Pressing.of(touches)).clashes());
	}

	@RepeatedTest(100)
	void whereKeysOnlyClosePressingWhatIsDownChangesNothing(RepetitionInfo repetition) {
		RandomMechanism random = new RandomMechanism(5_000 + repetition.getCurrentRepetition(), KEYS);
		Mechanism mechanism = random.closing(10);
		Set<String> closed = closed(mechanism, random.touches());
		Set<String> again = new TreeSet<>();
		closed.forEach(key -> again.add("T" + key.substring(1)));
		assertEquals(closed, closed(mechanism, again));
	}

	@RepeatedTest(100)
	void whereKeysOnlyCloseALinkLessClosesNothingMore(RepetitionInfo repetition) {
		RandomMechanism random = new RandomMechanism(6_000 + repetition.getCurrentRepetition(), KEYS);
		Mechanism mechanism = random.closing(10);
		List<KeyLink> fewer = new ArrayList<>(mechanism.links());
		KeyLink removed = fewer.remove(random.next(fewer.size()));
		Mechanism without = new Mechanism(mechanism.keys(), mechanism.holes(), mechanism.touches(), fewer);
		Set<String> touches = random.touches();
		Set<String> closed = closed(mechanism, touches);
		assertTrue(closed.containsAll(closed(without, touches)));
		if (!closed.contains(removed.driver())) {
			assertEquals(closed, closed(without, touches));
		}
	}

	@RepeatedTest(100)
	void whatMovesAKeyBeginsAtAFingerAndFollowsItsLinks(RepetitionInfo repetition) {
		RandomMechanism random = new RandomMechanism(7_000 + repetition.getCurrentRepetition(), KEYS);
		Mechanism mechanism = random.any(12, false);
		Set<String> touches = random.touches();
		mechanism.state(Pressing.of(touches)).moved().forEach((key, chain) -> {
			Pushed first = (Pushed) chain.get(0);
			assertTrue(touches.contains(first.touch().orElseThrow()));
			for (int i = 1; i < chain.size(); i++) {
				assertEquals(chain.get(i - 1).key(), ((Driven) chain.get(i)).link().driver());
			}
			assertEquals(key, chain.get(chain.size() - 1).key());
		});
	}

	private static Set<String> closed(Mechanism mechanism, Set<String> touches) {
		return mechanism.state(Pressing.of(touches)).holes(HoleState.CLOSED);
	}

	private static Set<String> keysIn(List<Clash> clashes) {
		Set<String> keys = new TreeSet<>();
		clashes.forEach(clash -> keys.add(clash.key()));
		return keys;
	}

	private static boolean isCircular(MechanismState state) {
		return state.clashes().stream().anyMatch(clash -> clash.kind() == Clash.Kind.CIRCULAR);
	}
}
