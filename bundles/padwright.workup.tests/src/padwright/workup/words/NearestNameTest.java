package padwright.workup.words;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;

import org.junit.jupiter.api.Test;

class NearestNameTest {

	@Test
	void theNameWithTheFewestLettersToChangeIsMeant() {
		assertEquals("paper", NearestName.among(List.of("acetal", "paper", "polyester"), "papper"));
		assertEquals("Gs", NearestName.among(List.of("F", "Gs", "Fs"), "Es"));
		assertEquals("kitten", NearestName.among(List.of("mitten", "kitten"), "kitte"));
	}

	@Test
	void theFirstOfEqualsIsMeant() {
		assertEquals("A", NearestName.among(List.of("A", "B"), "C"));
		assertEquals("B", NearestName.among(List.of("B", "A"), "C"));
	}

	@Test
	void amongNoneThereIsNone() {
		assertEquals("", NearestName.among(List.of(), "A"));
	}
}
