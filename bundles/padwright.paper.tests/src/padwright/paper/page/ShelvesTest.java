package padwright.paper.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

import org.junit.jupiter.api.Test;

import padwright.drawing.scene.Bounds;

class ShelvesTest {

	private static final double WIDTH = 190;
	private static final double GAP = 4;

	@Test
	void boxesKeepTheirSizeAndOrderAndStayApartWithinTheWidth() {
		SplittableRandom random = new SplittableRandom(21);
		for (int round = 0; round < 300; round++) {
			List<Bounds> boxes = boxes(random);
			List<List<Bounds>> shelves = Shelves.of(boxes, WIDTH, GAP);
			List<Bounds> placed = shelves.stream().flatMap(List::stream).toList();
			assertEquals(boxes.stream().map(Bounds::width).toList(), placed.stream().map(Bounds::width).toList());
			for (List<Bounds> shelf : shelves) {
				assertTrue(shelf.get(shelf.size() - 1).right() <= WIDTH);
				for (int i = 1; i < shelf.size(); i++) {
					assertFalse(shelf.get(i).left() < shelf.get(i - 1).right() + GAP - 1e-9);
				}
			}
		}
	}

	@Test
	void aBoxWiderThanAShelfIsRefused() {
		assertThrows(IllegalArgumentException.class, () -> Shelves.of(List.of(new Bounds(0, 0, 191, 5)), WIDTH, GAP));
	}

	private static List<Bounds> boxes(SplittableRandom random) {
		List<Bounds> boxes = new ArrayList<>();
		for (int box = random.nextInt(30); box > 0; box--) {
			boxes.add(new Bounds(0, 0, random.nextDouble(5, 120), random.nextDouble(5, 60)));
		}
		return boxes;
	}
}
