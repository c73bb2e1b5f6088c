package padwright.language.sound;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import padwright.language.Examples;
import padwright.language.TestShop;
import padwright.workup.sound.PadVenting;
import padwright.workup.sound.SystemSound;

class PadVentingTest {

	/** What the check passes over without computing: a sixth of the hole and 0.3 mm. */
	@ParameterizedTest
	@ValueSource(strings = { "boehm", "piccolo" })
	void padsThatTheCheckPassesOverDoLittle(String name) {
		SystemSound flute = SystemSound.of(new TestShop()
				.with("boehm.keys", Examples.text(Examples.TEMPLATES.resolve("systems/boehm.keys")))
				.with("a.keys", Examples.text(Examples.TEMPLATES.resolve("systems/" + name + ".keys"))).document("a.keys")
				.getSystems().get(0));
		for (PadVenting pad : PadVenting.of(flute)) {
			String hole = flute.holeUnder(pad.key()).orElseThrow();
			double diameter = 1000 * flute.instrument().orElseThrow().layout().holes().stream()
					.filter(each -> each.name().equals(hole)).findFirst().orElseThrow().diameter();
			assertTrue(pad.notes(diameter / 6 + 0.3).stream().allMatch(note -> note.cents() > -10), pad.key());
			assertEquals(pad.worst().orElseThrow().cents(),
					pad.notes(pad.rise()).stream().mapToDouble(note -> note.cents()).min().orElseThrow());
		}
	}
}
