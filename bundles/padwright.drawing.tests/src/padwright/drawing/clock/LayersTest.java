package padwright.drawing.clock;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.SplittableRandom;

import org.junit.jupiter.api.Test;

import padwright.engine.clock.Arc;
import padwright.engine.clock.ClockHour;

class LayersTest {

	@Test
	void noTwoArcsOfALayerShareMoreThanAnEndAndNoLayerIsWasted() {
		SplittableRandom random = new SplittableRandom(3);
		for (int round = 0; round < 500; round++) {
			List<Arc> arcs = new ArrayList<>();
			for (int i = random.nextInt(1, 6); i > 0; i--) {
				arcs.add(new Arc(new ClockHour(random.nextInt(24)), random.nextInt(1, 24)));
			}
			List<Integer> layers = Layers.of(arcs);
			int highest = layers.stream().max(Integer::compare).orElseThrow();
			for (int layer = 0; layer <= highest; layer++) {
				assertTrue(layers.contains(layer), arcs + " " + layers);
				assertApart(arcs, layers, layer);
			}
		}
	}

	private static void assertApart(List<Arc> arcs, List<Integer> layers, int layer) {
		BitSet taken = new BitSet();
		for (int i = 0; i < arcs.size(); i++) {
			BitSet halfHours = halfHours(arcs.get(i));
			if (layers.get(i) == layer) {
				assertFalse(taken.intersects(halfHours), arcs + " " + layers);
				taken.or(halfHours);
			}
		}
	}

	private static BitSet halfHours(Arc arc) {
		BitSet set = new BitSet();
		for (int i = 0; i < arc.halfHours(); i++) {
			set.set((arc.from().station() + i) % ClockHour.STATIONS);
		}
		return set;
	}

	@Test
	void neighboursLieOnTheRimAndTheLongerMakesWay() {
		Arc morning = Arc.between(ClockHour.ofHour(9), ClockHour.ofHour(12));
		Arc afternoon = Arc.between(ClockHour.ofHour(12), ClockHour.ofHour(3));
		assertEquals(List.of(0, 0), Layers.of(List.of(morning, afternoon)));
		Arc day = Arc.between(ClockHour.ofHour(8), ClockHour.ofHour(4));
		assertEquals(List.of(1, 0, 0), Layers.of(List.of(day, morning, afternoon)));
	}
}
