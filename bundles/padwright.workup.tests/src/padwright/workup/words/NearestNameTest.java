package padwright.workup.words;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;

import org.junit.jupiter.api.Test;

class NearestNameTest {

	@Test
	void theNameWithTheFewestLettersToChangeIsMeant() {
		assertEquals("paper", NearestName.among(List.of("acetal", "paper", "polyester"), "papper"));
		assertEquals("Fs", NearestName.among(List.of("F", "Fs", "G"), "Fz"));
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
