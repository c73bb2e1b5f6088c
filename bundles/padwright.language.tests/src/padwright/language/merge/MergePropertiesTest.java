package padwright.language.merge;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.StringReader;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

import org.eclipse.xtext.parser.IParser;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

import padwright.language.Examples;
import padwright.language.TestShop;

/** What holds for every merge, over seeded edits of all examples. */
class MergePropertiesTest {

	private static final int ROUNDS = 5;
	private static final int MOST_EDITS = 6;

	static List<Path> examples() {
		return Examples.documents();
	}

	private static MergeResult merge(String base, String ours, String theirs) {
		return TestShop.LANGUAGE.getInstance(DocumentMerge.class).merge(base, ours, theirs);
	}

	@ParameterizedTest
	@MethodSource("examples")
	void editsOfDifferentStatementsAreAllThereInEitherOrder(Path file) {
		String base = Examples.text(file);
		for (int round = 0; round < ROUNDS; round++) {
			RandomEdits edits = new RandomEdits(base, round);
			List<Integer> all = edits.statements().stream().limit(2L * MOST_EDITS).toList();
			String ours = edits.edited(all.subList(0, all.size() / 2));
			String theirs = edits.edited(all.subList(all.size() / 2, all.size()));
			MergeResult expected = new MergeResult(edits.edited(all), 0, false);
			assertEquals(expected, merge(base, ours, theirs), "round " + round);
			assertEquals(expected, merge(base, theirs, ours), "round " + round);
		}
	}

	/** Both copies also have an edit in common, so that the answer is not found by comparing whole texts. */
	@ParameterizedTest
	@MethodSource("examples")
	void whoChangedNothingMoreGivesWay(Path file) {
		String base = Examples.text(file);
		for (int round = 0; round < ROUNDS; round++) {
			RandomEdits edits = new RandomEdits(base, round);
			List<Integer> all = edits.statements().stream().limit(MOST_EDITS).toList();
			String some = edits.edited(all.subList(0, all.size() / 2));
			MergeResult expected = new MergeResult(edits.edited(all), 0, false);
			assertEquals(expected, merge(base, some, expected.text()));
			assertEquals(expected, merge(base, expected.text(), some));
		}
	}

	@ParameterizedTest
	@MethodSource("examples")
	void whateverTheCopiesHoldNothingIsLost(Path file) {
		String base = Examples.text(file);
		for (int round = 0; round < ROUNDS; round++) {
			String one = new RandomEdits(base, 2L * round).spoilt();
			String other = new RandomEdits(base, 2L * round + 1).spoilt();
			assertEquals(one, merge(base, base, one).text());
			assertEquals(one, merge(base, one, base).text());
			assertEquals(new MergeResult(one, 0, false), merge(base, one, one));
			MergeResult merged = merge(base, one, other);
			assertEquals(merged.conflicts(), Stream.of(merged.text().split("\\R"))
					.filter(ConflictMarks.OURS::equals).count());
			if (!merged.byLine() && merged.conflicts() == 0) {
				assertFalse(TestShop.LANGUAGE.getInstance(IParser.class).parse(new StringReader(merged.text()))
						.hasSyntaxErrors(), merged.text());
			}
		}
	}

	@ParameterizedTest
	@MethodSource("examples")
	void aDocumentIsTheSumOfItsParts(Path file) {
		String text = Examples.text(file);
		var parsed = TestShop.LANGUAGE.getInstance(IParser.class).parse(new StringReader(text));
		Part document = Parts.of(parsed.getRootNode(), text, Set.of());
		assertEquals(text, document.parts().stream().map(Part::text).reduce("", String::concat));
		assertTrue(document.parts().stream().filter(part -> !part.parts().isEmpty()).allMatch(MergePropertiesTest::isSum));
	}

	private static boolean isSum(Part part) {
		return part.parts().isEmpty() || part.body().equals(part.parts().stream().map(Part::text).reduce("", String::concat))
				&& part.parts().stream().allMatch(MergePropertiesTest::isSum);
	}
}
