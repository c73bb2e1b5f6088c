package padwright.engine.acoustics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The seven-hole flute of other tests here (invented), a pad leaking by 2 thou all around. */
class LeakHarmTest {

	private static final Instrument FLUTE = new Instrument(Tubes.sevenHoles(), Tubes.TWENTY);
	private static final Cover.Leaking TWO_THOU = new Cover.Leaking(Collections.nCopies(24, 50.8e-6));

	/** What sounding both by hand says, by a search for the resonance with the leak: the less there is to move, the nearer. */
	@ParameterizedTest
	@CsvSource({ "0.5,1e-5,1e-5", "1,1e-3,1e-3", "2,0.1,0.02", "4,8,0.6" })
	void isTheDifferenceOfTwoSounds(double thou, double cents, double decibels) {
		TargetNote note = note("xxxxooo", 345);
		Cover.Leaking leak = new Cover.Leaking(Collections.nCopies(24, thou * 25.4e-6));
		LeakHarm harm = LeakHarm.of(FLUTE, List.of(note), Map.of("2", List.of(leak))).get(0);
		Resonance tight = FLUTE.sound(note).played().orElseThrow();
		TargetNote leakingNote = new TargetNote("", tight.hertz(), note.fingering().with("2", leak));
		Resonance leaking = FLUTE.sound(leakingNote).played().orElseThrow();
		assertEquals("2", harm.hole());
		assertEquals(note, harm.note());
		assertEquals(leaking.centsAbove(tight.hertz()), harm.cents(), cents);
		assertEquals(tight.decibels() - leaking.decibels(), harm.decibels(), decibels);
		assertEquals(Math.pow(10, -harm.decibels() / 20), harm.left(), 1e-12);
		assertTrue(harm.decibels() > 0.01, "weaker by " + harm.decibels());
	}

	/** Only pads that a note closes; those below its first open hole hardly count, those above do. */
	@Test
	void padsBelowTheFirstOpenHoleHardlyCount() {
		Map<String, List<Cover.Leaking>> all = Stream.of("1", "2", "3", "4", "5", "6", "7")
				.collect(Collectors.toMap(hole -> hole, hole -> List.of(TWO_THOU)));
		List<LeakHarm> harms = LeakHarm.of(FLUTE, List.of(note("xxxooxo", 385), note("xxxxxxx", 260)), all);
		assertEquals(List.of("1", "2", "3", "6", "1", "2", "3", "4", "5", "6", "7"),
				harms.stream().map(LeakHarm::hole).toList());
		double below = harms.get(3).decibels();
		harms.subList(0, 3).forEach(above -> assertTrue(above.decibels() > 5 * below, above + " against " + below));
		harms.forEach(harm -> assertTrue(harm.decibels() > 0, harm.toString()));
	}

	/** A finer leak harms less, and a tight pad not at all. */
	@Test
	void harmGrowsWithTheGap() {
		double last = 0;
		for (double thou : new double[] { 0, 0.5, 1, 2, 3 }) {
			Cover.Leaking leak = new Cover.Leaking(Collections.nCopies(24, thou * 25.4e-6));
			double decibels = LeakHarm.of(FLUTE, List.of(note("xxxxxxx", 260)), Map.of("3", List.of(leak))).get(0).decibels();
			assertTrue(thou == 0 ? Math.abs(decibels) < 1e-6 : decibels > last, "at " + thou + " thou " + decibels);
			last = decibels;
		}
	}

	/** A perforated pad with a finger on it has a small room in it, tight or not. */
	@Test
	void aPerforatedPadThatIsNearlyTightHarmsNothing() {
		Layout layout = Tubes.sevenHoles();
		List<Hole> holes = layout.holes().stream().map(hole -> hole.under(new Cup(0.02, 0.003, 0.005, 0.003))).toList();
		Instrument flute = new Instrument(new Layout(layout.bore(), layout.mouth(), holes), Tubes.TWENTY);
		Cover.Leaking fine = new Cover.Leaking(Collections.nCopies(24, 1e-7));
		LeakHarm harm = LeakHarm.of(flute, List.of(note("xxxxxxx", 260)), Map.of("3", List.of(fine))).get(0);
		assertEquals(0, harm.cents(), 1e-4);
		assertEquals(0, harm.decibels(), 1e-3);
	}

	@Test
	void withoutLeaksThereIsNoHarm() {
		assertEquals(List.of(), LeakHarm.of(FLUTE, List.of(note("xxxxxxx", 260)), Map.of()));
		assertEquals(List.of(), LeakHarm.of(FLUTE, List.of(), Map.of("3", List.of(TWO_THOU))));
	}

	private static TargetNote note(String holes, double hertz) {
		return new TargetNote(holes, hertz, Tubes.fingering(holes));
	}
}
