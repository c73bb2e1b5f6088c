package padwright.language.ide.completion;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;

import org.junit.jupiter.api.Test;

class SnippetTextTest {

	@Test
	void stopsStandWhereTheirWordsStand() {
		SnippetText snippet = SnippetText.of("film ${1:Clear} ${2|paper,card|} { $0 } // ${1}, ${3}");
		assertEquals("film Clear paper {  } // Clear, ", snippet.text());
		assertEquals(List.of(new SnippetText.Stop(1, 5, 5, List.of()),
				new SnippetText.Stop(2, 11, 5, List.of("paper", "card")), new SnippetText.Stop(0, 19, 0, List.of()),
				new SnippetText.Stop(1, 25, 5, List.of()), new SnippetText.Stop(3, 32, 0, List.of())), snippet.stops());
	}

	@Test
	void bracesOfTheTextItselfAreNone() {
		assertEquals("stock A { }", SnippetText.of("stock ${1:A} { }").text());
	}
}
