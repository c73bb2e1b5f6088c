package padwright.drawing.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

import org.junit.jupiter.api.Test;

class LanesTest {

	@Test
	void stretchesOfOneLaneStayApartAndThereAreNoMoreLanesThanStretchesThatMeet() {
		SplittableRandom random = new SplittableRandom(41);
		for (int round = 0; round < 300; round++) {
			List<Lanes.Stretch> stretches = new ArrayList<>();
			for (int count = random.nextInt(12); count > 0; count--) {
				stretches.add(Lanes.Stretch.between(random.nextInt(100), random.nextInt(100)));
			}
			List<Integer> lanes = Lanes.of(stretches);
			for (int one = 0; one < lanes.size(); one++) {
				int meeting = 0;
				for (int other = 0; other < lanes.size(); other++) {
					boolean meets = one != other && stretches.get(one).meets(stretches.get(other));
					assertTrue(!meets || !lanes.get(one).equals(lanes.get(other)), stretches.toString());
					meeting += meets ? 1 : 0;
				}
				assertTrue(lanes.get(one) <= meeting);
			}
		}
	}

	@Test
	void labelsStayInOrderAndApartAndWhereTheyCanBe() {
		assertEquals(List.of(0.0, 3.0, 6.0, 20.0), Lanes.spread(List.of(0.0, 1.0, 2.0, 20.0), 3));
	}
}
