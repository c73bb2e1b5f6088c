package padwright.paper.card;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;

import org.junit.jupiter.api.Test;

import padwright.engine.length.Length;

class CardHeightTest {

	@Test
	void sumAndErrorAreExact() {
		CardHeight height = new CardHeight(Optional.of(Length.thou("14.6")),
				List.of(Length.thou("7.5"), Length.thou("5"), Length.thou("2")), "");
		assertEquals(Length.thou("14.5"), height.sum());
		assertEquals(Optional.of(Length.thou("-0.1")), height.error());
		assertEquals("7.5 + 5 + 2 = 14.5", height.words());
	}

	@Test
	void withoutShimsThereIsNothingToAdd() {
		CardHeight height = new CardHeight(Optional.empty(), List.of(), "");
		assertEquals(Length.ZERO, height.sum());
		assertEquals(Optional.empty(), height.error());
		assertEquals("none", height.words());
		assertEquals("7.5", new CardHeight(Optional.empty(), List.of(Length.thou("7.5")), "").words());
	}
}
