package padwright.views.rows;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.junit.jupiter.api.Test;

import padwright.language.edit.TextEdit;
import padwright.views.Bench;

class RowTypingTest {

	private static RowTyping begin(Bench bench) {
		return RowTyping.of(rows(bench).rows().get(0)).orElseThrow();
	}

	private static KeyRows rows(Bench bench) {
		return KeyRows.of(bench.plan(), bench.findings());
	}

	private static RowTyping typed(String strokes) {
		RowTyping typing = begin(Bench.ofEightHours("key B"));
		for (char stroke : strokes.toCharArray()) {
			typing = typing.press(stroke);
		}
		return typing;
	}

	@Test
	void eightStrokesAreARow() {
		assertEquals(". . 0.5 1 2 . . 0.5", typed("..512..5").text());
		assertTrue(typed("..512..5").isFull());
		assertFalse(typed("..512..").isFull());
		assertEquals(typed("..512..5"), typed("..512..511"));
	}

	@Test
	void oneStrokeSaysThatAllThatIsLeftDrags() {
		assertEquals(". . . . . . . .", typed("*").text());
		assertEquals("1 . . . . . . .", typed("1*").text());
	}

	@Test
	void aFigureIsEndedByABlankAndTakenBackByTheRubout() {
		assertEquals("0.7 1", typed("0.7 1").text());
		assertEquals("1 0.", typed("10.7\b").text());
		assertEquals("1", typed("1.\b").text());
		assertEquals("", typed("\b").text());
	}

	@Test
	void cellsTypedFasterThanTheTextIsReadAreAllWritten() {
		Bench bench = new Bench("key B\nkey A");
		List<List<TextEdit>> edits = new ArrayList<>();
		List<Boolean> open = new ArrayList<>(List.of(true, false, true));
		RowWriting writing = new RowWriting(change -> open.remove(0) && edits.add(change));
		KeyRows before = rows(bench);
		writing.show(before);
		assertEquals(Optional.empty(), writing.write("B", KeyColumn.READINGS, ". . . 1"));
		assertEquals(Optional.empty(), writing.write("A", KeyColumn.READINGS, "1 . . ."));
		assertTrue(writing.write("A", KeyColumn.READINGS, "x").isPresent());
		writing.show(before);
		assertEquals(1, edits.size(), "the second waits for the text");
		bench.apply(edits.remove(0));
		writing.show(rows(bench));
		assertEquals(0, edits.size(), "refused");
		writing.show(rows(bench));
		bench.apply(edits.remove(0));
		assertEquals("key B felt . . . 1\nkey A felt 1 . . .", bench.rows());
	}
}
