package padwright.drawing.scene;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class TransformTest {

	@Test
	void oneAfterAnotherIsBothInTurn() {
		Transform first = Transform.scaling(2, 3, -1);
		Transform second = new Transform(0.8, 0.6, -0.6, 0.8, 0, 0);
		Transform both = second.after(first);
		double x = first.xOf(5, 7);
		double y = first.yOf(5, 7);
		assertEquals(second.xOf(x, y), both.xOf(5, 7), 1e-12);
		assertEquals(second.yOf(x, y), both.yOf(5, 7), 1e-12);
	}

	@Test
	void aQuarterTurnTakesTheTopToTheRight() {
		Transform turn = Transform.rotation(90);
		assertEquals(1, turn.xOf(0, -1), 1e-12);
		assertEquals(0, turn.yOf(0, -1), 1e-12);
	}
}
