package padwright.language.systems;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

import padwright.engine.mechanism.HoleState;
import padwright.engine.mechanism.MechanismState;
import padwright.engine.mechanism.Pressing;
import padwright.engine.pitch.NoteName;
import padwright.workup.mechanism.SystemFingering;
import padwright.workup.mechanism.SystemHole;
import padwright.workup.mechanism.SystemMechanism;

/**
 * The ladder of semitones: what is open first from the head speaks, and each hole speaks the next semitone. So no key of
 * a shipped system is too many or too few, and none lies where its note cannot be.
 */
class LadderTest {

	/** Speed of sound in mm/s at about 22 °C. */
	private static final double SOUND = 345_000;

	/**
	 * A line of the table.
	 *
	 * @param wave which part of a wave the air column is long: 0.5, or 0.25 for one closed at an end
	 * @param rungs the holes, the lowest first; - where no hole speaks
	 * @param closedAlong holes that stand open but close with another
	 */
	record Ladder(String system, int pads, int lowest, double wave, List<String> rungs, Set<String> closedAlong) {

		static Ladder of(String line) {
			String[] sides = line.split("[:|]", -1);
			String[] head = sides[0].strip().split(" ");
			return new Ladder(head[0], Integer.parseInt(head[1]), NoteName.parse(head[2]).midi(),
					1.0 / Integer.parseInt(head[3].substring(2)), List.of(sides[1].strip().split(" ")),
					Set.of(sides[2].strip().split(" ")));
		}

		SystemMechanism mechanism() {
			return ShippedSystems.all().get(system);
		}

		@Override
		public String toString() {
			return system;
		}
	}

	static List<Ladder> ladders() {
		return ShippedSystems.lines("ladders.txt").stream().map(Ladder::of).toList();
	}

	@Test
	void everyShippedSystemHasItsLadder() {
		assertEquals(new TreeSet<>(ShippedSystems.all().keySet()),
				ladders().stream().map(Ladder::system).collect(Collectors.toCollection(TreeSet::new)));
	}

	@ParameterizedTest
	@MethodSource("ladders")
	void padsAreCounted(Ladder ladder) {
		assertEquals(ladder.pads, ladder.mechanism().system().pads().size());
	}

	@ParameterizedTest
	@MethodSource("ladders")
	void eachFirstOpenHoleSpeaksTheNextSemitone(Ladder ladder) {
		assertTrue(firstOpen(ladder, ladder.lowest).contains(""), "the lowest note is that of the open end");
		for (int rung = 0; rung < ladder.rungs.size(); rung++) {
			int note = ladder.lowest + 1 + rung;
			String hole = ladder.rungs.get(rung);
			assertTrue(hole.equals("-") || firstOpen(ladder, note).contains(hole),
					() -> NoteName.ofMidi(note) + " speaks from " + firstOpen(ladder, note) + ", not from " + hole);
		}
	}

	@ParameterizedTest
	@MethodSource("ladders")
	void everyHoleThatStandsOpenIsARung(Ladder ladder) {
		MechanismState atRest = ladder.mechanism().mechanism().state(Pressing.of());
		Set<String> needless = new TreeSet<>(atRest.holes(HoleState.OPEN));
		needless.removeAll(ladder.rungs);
		needless.removeAll(ladder.closedAlong);
		assertEquals(Set.of(), needless);
	}

	/** The part of a wave less the place of a hole changes from rung to rung by less than three quarters of the step. */
	@ParameterizedTest
	@MethodSource("ladders")
	void rungsLieWhereTheirNotesCanBe(Ladder ladder) {
		List<Integer> rungs = new ArrayList<>();
		for (int rung = 0; rung < ladder.rungs.size(); rung++) {
			if (!ladder.rungs.get(rung).equals("-")) {
				rungs.add(rung);
			}
		}
		for (int i = 1; i < rungs.size(); i++) {
			int lower = rungs.get(i - 1);
			int upper = rungs.get(i);
			double step = wave(ladder, lower) - wave(ladder, upper);
			double apart = place(ladder, lower) - place(ladder, upper);
			assertTrue(apart > 0 && Math.abs(step - apart) < 0.75 * step,
					() -> "from " + ladder.rungs.get(lower) + " to " + ladder.rungs.get(upper) + " it is " + apart
							+ " mm, and should be about " + step + " mm");
		}
	}

	@Test
	void theQuarterToneFluteGivesTwentyFourNotesAnOctave() {
		SystemMechanism flute = ShippedSystems.all().get("QuarterTone");
		for (int octave = 4; octave < 6; octave++) {
			Set<Set<String>> open = new HashSet<>();
			for (int step = 0; step < 24; step++) {
				int cents = 1200 * (octave + 1) + 50 * step;
				open.add(flute.fingerings().stream().filter(fingering -> pitch(fingering) == cents).findFirst()
						.map(fingering -> flute.state(fingering).holes(HoleState.OPEN)).orElseThrow());
			}
			assertEquals(24, open.size());
		}
	}

	private static int pitch(SystemFingering fingering) {
		return 100 * NoteName.parse(fingering.note()).midi() + fingering.cents().intValue();
	}

	/** In mm. */
	private static double wave(Ladder ladder, int rung) {
		double midi = ladder.lowest + 1 + rung + ladder.mechanism().system().transposition().doubleValue();
		return ladder.wave * SOUND
				/ (ladder.mechanism().system().pitch().doubleValue() * Math.pow(2, (midi - 69) / 12));
	}

	/** In mm. */
	private static double place(Ladder ladder, int rung) {
		SystemHole hole = ladder.mechanism().holes().stream()
				.filter(each -> each.name().equals(ladder.rungs.get(rung))).findFirst().orElseThrow();
		return hole.at().orElseThrow().nanometres() / 1e6;
	}

	/** The hole that is open first for each fingering of a note; an empty name for none. */
	private static Set<String> firstOpen(Ladder ladder, int midi) {
		return ladder.mechanism().fingerings().stream().filter(fingering -> isNote(fingering, midi))
				.map(fingering -> first(ladder.mechanism().state(fingering)).orElse("")).collect(Collectors.toSet());
	}

	private static boolean isNote(SystemFingering fingering, int midi) {
		return pitch(fingering) == 100 * midi;
	}

	private static Optional<String> first(MechanismState state) {
		return state.sounding().stream().findFirst();
	}
}
