package padwright.views.clock;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

import padwright.engine.length.Length;
import padwright.engine.length.LengthUnit;
import padwright.views.Shown;
import padwright.workup.solve.LeafReading;

class ReadingKeysTest {

	@AfterEach
	void asAtFirst() {
		Shown.setUnit(LengthUnit.THOU);
		Shown.setTypedInFull(false);
	}

	private static List<Length> leaves(String... thou) {
		return Stream.of(thou).map(Length::thou).toList();
	}

	@Test
	void wholeAndHalfLeavesHaveTheirOwnFigures() {
		ReadingKeys keys = ReadingKeys.of(leaves("0.5", "1", "1.5", "2", "3", "4"), false);
		assertEquals(Map.of('5', Length.thou("0.5"), '1', Length.thou("1"), '6', Length.thou("1.5"), '2',
				Length.thou("2"), '3', Length.thou("3"), '4', Length.thou("4")), keys.leaves());
		assertEquals(List.of('5', '1', '6', '2', '3', '4'), keys.digits());
	}

	@Test
	void aWholeLeafGoesBeforeTenths() {
		assertEquals(Map.of('1', Length.thou("0.5"), '5', Length.thou("5")),
				ReadingKeys.of(leaves("0.5", "5"), false).leaves());
	}

	@Test
	void inMillimetresTheFinestIsOne() {
		Shown.setUnit(LengthUnit.MILLIMETRE);
		assertEquals(List.of('1', '2'), ReadingKeys.of(leaves("0.5", "1"), false).digits());
	}

	@Test
	void leavesBeyondTheDigitsAreTypedAsFigures() {
		String[] twelve = {"1", "2", "3", "4", "5", "6", "7", "8", "9", "10", "11", "12"};
		assertEquals(9, ReadingKeys.of(leaves(twelve), false).leaves().size());
	}

	@Test
	void noughtAndOtherDigitsBeginFigures() {
		ReadingKeys keys = ReadingKeys.of(leaves("0.5", "1"), false);
		assertEquals(Optional.of(LeafReading.DRAGS), keys.reading(','));
		assertEquals(Optional.empty(), keys.reading('-'));
		assertEquals(Optional.of(LeafReading.DRAGS_LIGHTLY), ReadingKeys.of(List.of(), true).reading('-'));
		assertEquals(Optional.empty(), keys.reading('0'));
		assertEquals(Optional.empty(), keys.reading('7'));
	}

	@Test
	void typedInFullNoStrokeIsAReading() {
		Shown.setTypedInFull(true);
		ReadingKeys keys = ReadingKeys.of(leaves("0.5", "1"), true);
		assertEquals(Map.of(), keys.leaves());
		assertEquals(Optional.empty(), keys.reading('.'));
		assertEquals(Optional.empty(), keys.reading('-'));
	}
}
