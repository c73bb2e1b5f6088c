package padwright.engine.coupling;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;

import org.junit.jupiter.api.Test;

import padwright.engine.length.Length;

class UpsetTest {

	private static final CouplingGraph CHAIN =
			CouplingGraphTest.graph(List.of("Trill", "F", "Fs", "As"), "Trill>F", "F>Fs", "F>As");

	@Test
	void aThickerStackUnderADrivenKeyHoldsUpEveryDriverOfTheChain() {
		Length half = Length.thou("0.5");
		List<Upset> upsets = CHAIN.upset("Fs", half);
		assertEquals(List.of(new Upset("Trill", "Trill", half), new Upset("Trill", "F", half),
				new Upset("Trill", "As", half), new Upset("F", "F", half), new Upset("F", "As", half)), upsets);
		assertEquals(List.of("Trill", "F"), upsets.stream().filter(Upset::isAtDriver).map(Upset::driver).toList());
	}

	@Test
	void aThinnerStackLeavesTheDrivenKeyOpen() {
		Length one = Length.thou("1");
		List<Upset> upsets = CHAIN.upset("Fs", one.negated());
		assertEquals(List.of(new Upset("Trill", "Fs", one), new Upset("F", "Fs", one)), upsets);
		assertTrue(upsets.stream().noneMatch(Upset::isAtDriver));
	}

	@Test
	void theSameChangeEverywhereUpsetsNothingAndAddsNothing() {
		SplittableRandom random = new SplittableRandom(71);
		for (int i = 0; i < 200; i++) {
			Map<String, Length> changes = new HashMap<>();
			Map<String, Length> shifted = new HashMap<>();
			Map<String, Length> same = new HashMap<>();
			Length shift = new Length(random.nextLong(-50_000, 50_001));
			for (String key : CHAIN.keys()) {
				changes.put(key, new Length(random.nextLong(-50_000, 50_001)));
				shifted.put(key, changes.get(key).plus(shift));
				same.put(key, shift);
			}
			assertEquals(CHAIN.upsets(changes), CHAIN.upsets(shifted));
			assertEquals(List.of(), CHAIN.upsets(same));
		}
	}

	/** Lowers the driver by single nanometres until a pad lands; what stays open is what was predicted. */
	@Test
	void predictionEqualsLoweringTheKeysStepByStep() {
		SplittableRandom random = new SplittableRandom(72);
		for (int i = 0; i < 300; i++) {
			long f = random.nextLong(-40, 41);
			long fs = random.nextLong(-40, 41);
			long as = random.nextLong(-40, 41);
			long height = 100;
			while (height > f && height > fs && height > as) {
				height--;
			}
			Map<String, Long> open = Map.of("F", height - f, "Fs", height - fs, "As", height - as);
			List<Upset> upsets = CHAIN.upsets(Map.of("F", new Length(f), "Fs", new Length(fs), "As", new Length(as)));
			open.forEach((key, light) -> assertEquals(light, upsets.stream()
					.filter(upset -> upset.driver().equals("F") && upset.lightAt().equals(key))
					.mapToLong(upset -> upset.light().nanometres()).sum()));
		}
	}

	@Test
	void turningTheAdjusterByTheUpsetBalancesThePair() {
		Coupling pair = new Coupling("F", "Fs", new Screw(Length.millimetres("0.25")));
		CouplingGraph graph = new CouplingGraph(List.of("F", "Fs"), List.of(pair));
		Length light = graph.upset("Fs", Length.thou("2")).get(0).light();
		ScrewTurn turn = (ScrewTurn) new Regulation(pair, Regulation.Side.DRIVER, light).adjustment();
		assertEquals(73, turn.degrees());
		assertEquals(-1, turn.travel().signum());
	}
}
