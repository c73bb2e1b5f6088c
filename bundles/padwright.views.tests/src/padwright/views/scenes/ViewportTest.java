package padwright.views.scenes;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.SplittableRandom;

import org.junit.jupiter.api.Test;

import padwright.drawing.scene.Bounds;
import padwright.drawing.scene.Scene;

class ViewportTest {

	private final SplittableRandom random = new SplittableRandom(5);

	private Viewport any() {
		return new Viewport(0.5 + random.nextDouble() * 20, random.nextDouble() * 500 - 250,
				random.nextDouble() * 500 - 250);
	}

	@Test
	void theWholeDrawingFitsAndTouchesTwoSides() {
		for (int round = 0; round < 200; round++) {
			Scene scene = new Scene("", 5 + random.nextInt(300), 5 + random.nextInt(300), List.of());
			double width = 50 + random.nextInt(1000);
			double height = 50 + random.nextInt(1000);
			Viewport view = Viewport.whole(scene, width, height);
			double left = view.windowX(0);
			double top = view.windowY(0);
			assertTrue(left > -1e-9 && top > -1e-9 && Math.min(left, top) < 1e-9);
			assertEquals(width - left, view.windowX(scene.width()), 1e-9);
			assertEquals(height - top, view.windowY(scene.height()), 1e-9);
		}
	}

	@Test
	void zoomingHoldsThePointUnderTheMouse() {
		for (int round = 0; round < 200; round++) {
			Viewport view = any();
			double x = random.nextDouble() * 800;
			double y = random.nextDouble() * 600;
			Viewport zoomed = view.zoomed(0.5 + random.nextDouble() * 2, x, y);
			assertEquals(view.sceneX(x), zoomed.sceneX(x), 1e-9);
			assertEquals(view.sceneY(y), zoomed.sceneY(y), 1e-9);
		}
	}

	@Test
	void pointsGoThereAndBack() {
		Viewport view = any();
		assertEquals(12.5, view.sceneX(view.windowX(12.5)), 1e-9);
		assertEquals(-3, view.sceneY(view.windowY(-3)), 1e-9);
	}

	@Test
	void aTargetThatFitsIsBroughtIntoSightAndOneInSightStays() {
		for (int round = 0; round < 200; round++) {
			Viewport view = any();
			Bounds target = new Bounds(random.nextInt(200) - 100, random.nextInt(200) - 100, 4, 3);
			Viewport shown = view.showing(target, 400, 300);
			assertTrue(shown.windowX(target.left()) > -1e-6 && shown.windowX(target.right()) < 400 + 1e-6);
			assertTrue(shown.windowY(target.top()) > -1e-6 && shown.windowY(target.bottom()) < 300 + 1e-6);
			Viewport again = shown.showing(target, 400, 300);
			assertEquals(shown.left(), again.left(), 1e-6);
			assertEquals(shown.top(), again.top(), 1e-6);
		}
	}

	@Test
	void thereAreLimits() {
		assertEquals(400, new Viewport(100, 0, 0).zoomed(1000, 0, 0).scale());
		assertEquals(0.2, new Viewport(100, 0, 0).zoomed(1e-6, 0, 0).scale());
		assertThrows(IllegalArgumentException.class, () -> new Viewport(0, 0, 0));
	}
}
