package padwright.engine.rim;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;

class LinearProgramTest {

	@Test
	void takesTheBestVertex() {
		double[][] balance = { { 1, 1, -1 } };
		double[][] sums = { { 0, 0, 0.5 }, { 2, 0, 0 } };

		LinearProgram.Solution best = LinearProgram.maximise(new double[] { 3, 1, 0 }, balance, sums);

		assertEquals(3, best.total(), 1e-12);
		assertArrayEquals(new double[] { 0.5, 1.5, 2 }, best.x(), 1e-12);
		assertArrayEquals(new double[] { 0, 0 }, best.slack(), 1e-12);
	}

	@Test
	void leavesWhatDoesNotPay() {
		LinearProgram.Solution best = LinearProgram.maximise(new double[] { -1, -2 }, new double[0][],
				new double[][] { { 1, 1 } });

		assertEquals(0, best.total());
		assertArrayEquals(new double[] { 1 }, best.slack());
	}

	@Test
	void refusesAProgrammeWithoutBound() {
		assertThrows(IllegalArgumentException.class,
				() -> LinearProgram.maximise(new double[] { 1, 0 }, new double[][] { { 1, -1 } }, new double[0][]));
	}
}
