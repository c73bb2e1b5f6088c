package padwright.drawing.scene;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;

class TextTest {

	@Test
	void whatCannotBePrintedBecomesASpace() {
		assertEquals("a b c d", Text.of("a\nb\u0000c\uD800d", 0, 0, Face.BOLD, 1).text());
		assertEquals("F♯ \uD834\uDD2B", Text.of("F♯ \uD834\uDD2B", 0, 0, Face.BOLD, 1).text());
	}

	@Test
	void textWithoutHeightIsRefused() {
		assertThrows(IllegalArgumentException.class, () -> Text.of("a", 0, 0, Face.BOLD, 0));
	}
}
