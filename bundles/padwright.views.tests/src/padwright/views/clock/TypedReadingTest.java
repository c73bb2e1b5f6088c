package padwright.views.clock;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import padwright.engine.length.Length;
import padwright.workup.solve.LeafReading;

class TypedReadingTest {

	private static final List<Length> LEAVES = List.of(Length.thou("0.5"), Length.thou("1"), Length.thou("2"));

	private static void assertReads(String typed, String leaf, boolean asTyped) {
		LeafReading reading = leaf.isEmpty() ? LeafReading.DRAGS : LeafReading.slides(Length.thou(leaf));
		assertEquals(Optional.of(new TypedReading(reading, asTyped, false)), TypedReading.of(typed, LEAVES));
	}

	@Test
	void aLeafOfTheStockIsTakenAsItIs() {
		assertReads("0.5", "0.5", true);
		assertReads("1,0", "1", true);
		assertReads("02", "2", true);
		assertReads(".5", "0.5", true);
	}

	@Test
	void anIndicatorsFigureTellsWhichLeafSlidesFree() {
		assertReads("0.8", "0.5", false);
		assertReads("1.99", "1", false);
		assertReads("0.4", "", false);
		assertReads("0.5123", "0.5", false);
	}

	/** As figures in thou typed while millimetres are shown. */
	@Test
	void moreThanTheThickestFeelerIsNoReading() {
		assertTrue(TypedReading.of("7", LEAVES).orElseThrow().isBeyond());
		assertTrue(TypedReading.of("2.5", LEAVES).orElseThrow().isBeyond());
		assertFalse(TypedReading.of("2", LEAVES).orElseThrow().isBeyond());
		assertFalse(TypedReading.of("7", List.of()).orElseThrow().isBeyond());
	}

	@Test
	void aPointOrNothingDrags() {
		assertReads(".", "", true);
		assertReads(",", "", true);
		assertReads("0", "", true);
	}

	@Test
	void aDashDragsLightly() {
		assertEquals(Optional.of(new TypedReading(LeafReading.DRAGS_LIGHTLY, true, false)), TypedReading.of("-", LEAVES));
	}

	@Test
	void withoutFeelersEveryThicknessIsALeaf() {
		assertEquals(Optional.of(new TypedReading(LeafReading.slides(Length.thou("0.8")), true, false)),
				TypedReading.of("0.8", List.of()));
	}

	@ParameterizedTest
	@ValueSource(strings = { "", "1.2.3", "..", "99999999999999999999" })
	void whatIsNoLengthIsNoReading(String typed) {
		assertEquals(Optional.empty(), TypedReading.of(typed, LEAVES));
	}
}
