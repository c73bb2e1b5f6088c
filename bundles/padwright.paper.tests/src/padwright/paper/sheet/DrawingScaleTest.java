package padwright.paper.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class DrawingScaleTest {

	@Test
	void theLargestUsualScaleIsTaken() {
		assertEquals("1 : 1", DrawingScale.fitting(200, 200).toString());
		assertEquals("1 : 2", DrawingScale.fitting(201, 200).toString());
		assertEquals("1 : 2.5", DrawingScale.fitting(500, 200).toString());
		assertEquals("1 : 100", DrawingScale.fitting(20_000, 200).toString());
		assertEquals(20, DrawingScale.fitting(500, 200).onPaper(50));
	}
}
