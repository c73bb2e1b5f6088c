package padwright.language.merge;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.junit.jupiter.api.Test;

import padwright.language.Mark;
import padwright.language.TestShop;
import padwright.workup.checks.IssueCodes;

class DocumentMergeTest {

	private static final String BASE = """
			plan Spring for Flute {
				seat within 0.5 thou
				read at 12 3 6 9
				// the first key
				key A empty 15 15 15 15 stack 7.5 7.5 // as found
				key B felt . 0.5 . .
				key C   empty 15 15

				regulate A > B : 0.5 thou light at driven
			}
			""";

	private static MergeResult merge(String base, String ours, String theirs) {
		return TestShop.LANGUAGE.getInstance(DocumentMerge.class).merge(base, ours, theirs);
	}

	private static String clean(String ours, String theirs) {
		MergeResult merged = merge(BASE, ours, theirs);
		assertEquals(0, merged.conflicts(), merged.text());
		assertFalse(merged.byLine());
		return merged.text();
	}

	private static String conflict(String ours, String theirs) {
		MergeResult merged = merge(BASE, ours, theirs);
		assertEquals(1, merged.conflicts(), merged.text());
		assertFalse(merged.byLine());
		return merged.text();
	}

	@Test
	void twoClausesOfOneRowAreMerged() {
		String ours = BASE.replace("stack 7.5 7.5", "stack 7.5 5 2");
		String theirs = BASE.replace("key A empty", "key A found torn empty");
		assertEquals(ours.replace("key A empty", "key A found torn empty"), clean(ours, theirs));
	}

	@Test
	void neighbouringRowsAreMerged() {
		String ours = BASE.replace("stack 7.5 7.5", "stack 7.5 5 2");
		String theirs = BASE.replace("felt . 0.5 . .", "felt . . . . shim none");
		assertEquals(ours.replace("felt . 0.5 . .", "felt . . . . shim none"), clean(ours, theirs));
	}

	@Test
	void aRowThatWasMovedKeepsTheOthersChange() {
		String ours = BASE.replace("\tkey C   empty 15 15\n", "").replace("\tkey B", "\tkey C   empty 15 15\n\tkey B");
		String theirs = BASE.replace("key C   empty 15 15", "key C   empty 15 16");
		assertEquals(ours.replace("15 15\n\tkey B", "15 16\n\tkey B"), clean(ours, theirs));
	}

	@Test
	void newRowsOfBothSidesStandInEitherOrderAlike() {
		String ours = BASE.replace("\n\n\tregulate", "\n\tkey E\n\n\tregulate");
		String theirs = BASE.replace("\n\n\tregulate", "\n\tkey D\n\n\tregulate");
		String both = BASE.replace("\n\n\tregulate", "\n\tkey D\n\tkey E\n\n\tregulate");
		assertEquals(both, clean(ours, theirs));
		assertEquals(both, clean(theirs, ours));
	}

	@Test
	void anUntouchedRowThatWasTakenAwayIsGone() {
		String ours = BASE.replace("\tkey B felt . 0.5 . .\n", "");
		String theirs = BASE.replace("stack 7.5 7.5", "stack 7.5");
		assertEquals(ours.replace("stack 7.5 7.5", "stack 7.5"), clean(ours, theirs));
	}

	@Test
	void layoutGivesWayToWords() {
		String ours = BASE.replace("key A empty 15 15 15 15", "key A\n\t\tempty 15 15 15 15");
		String theirs = BASE.replace("key A empty 15 15 15 15", "key A empty 15 15 15 16");
		assertTrue(clean(ours, theirs).contains("15 15 15 16"));
	}

	@Test
	void commentsOfBothSidesStay() {
		String ours = BASE.replace("// the first key", "// the first key, newly plated");
		String theirs = BASE.replace("// as found", "// as it was found");
		assertEquals(ours.replace("// as found", "// as it was found"), clean(ours, theirs));
	}

	@Test
	void aRenamedPlanIsStillTheSame() {
		String ours = BASE.replace("plan Spring", "plan Summer");
		String theirs = BASE.replace("within 0.5", "within 0.7");
		assertEquals(ours.replace("within 0.5", "within 0.7"), clean(ours, theirs));
	}

	@Test
	void bothMayMakeTheSameChange() {
		String both = BASE.replace("stack 7.5 7.5", "stack 7.5");
		assertEquals(both.replace("within 0.5", "within 1"), clean(both, both.replace("within 0.5", "within 1")));
	}

	@Test
	void twoChangesOfOneClauseAreMarkedWithAllElseMerged() {
		String text = conflict(BASE.replace("stack 7.5 7.5", "stack 7.5 5"),
				BASE.replace("stack 7.5 7.5", "stack 7.5 2").replace("key A empty", "key A found torn empty"));
		assertTrue(text.contains("""
				<<<<<<< ours
					// the first key
					key A found torn empty 15 15 15 15 stack 7.5 5 // as found
				=======
					// the first key
					key A found torn empty 15 15 15 15 stack 7.5 2 // as found
				>>>>>>> theirs
					key B"""), text);
	}

	@Test
	void aRowTakenAwayHereAndChangedThereIsMarked() {
		String text = conflict(BASE.replace("\tkey B felt . 0.5 . .\n", ""), BASE.replace(". 0.5 . .", ". 1 . ."));
		assertTrue(text.contains("<<<<<<< ours\n=======\n\tkey B felt . 1 . .\n>>>>>>> theirs\n"), text);
	}

	@Test
	void aRowAddedTwiceIsMarked() {
		String text = conflict(BASE.replace("\tkey C", "\tkey D found torn\n\tkey C"),
				BASE.replace("\tkey C", "\tkey D found worn\n\tkey C"));
		assertTrue(text.contains("<<<<<<< ours\n\tkey D found torn\n=======\n\tkey D found worn\n>>>>>>>"), text);
	}

	@Test
	void checkPointsAtTheMarksAndReadsTheFirstText() {
		String text = conflict(BASE.replace("stack 7.5 7.5", "stack 7.5 5"), BASE.replace("stack 7.5 7.5", "stack 2"));
		List<Mark> syntax = TestShop.of("spring.plan", text).findings("spring.plan").stream()
				.filter(mark -> mark.code().equals(IssueCodes.SYNTAX)).toList();
		assertEquals(List.of(text.indexOf("<<<<<<<"), text.indexOf("=======")),
				syntax.stream().map(Mark::offset).toList());
	}

	@Test
	void rowsMovedInTwoWaysAreAConflict() {
		String ours = BASE.replace("\tkey B felt . 0.5 . .\n", "").replace("\tkey C   empty 15 15\n",
				"\tkey C   empty 15 15\n\tkey B felt . 0.5 . .\n");
		String theirs = BASE.replace("\tkey B felt . 0.5 . .\n", "").replace("\t// the first",
				"\tkey B felt . 0.5 . .\n\t// the first");
		conflict(ours, theirs);
	}

	@Test
	void whatCannotBeReadIsMergedByLines() {
		MergeResult merged = merge(BASE, BASE.replace("seat within", "seat witin"), BASE.replace("15 15\n", "15 16\n"));
		assertTrue(merged.byLine());
		assertEquals(0, merged.conflicts());
		assertEquals(BASE.replace("seat within", "seat witin").replace("15 15\n", "15 16\n"), merged.text());
	}

	@Test
	void linesChangedTwiceAreMarked() {
		MergeResult merged = merge("a {\nb\nc", "a {\nx\nc", "a {\ny\nc");
		assertEquals("a {\n<<<<<<< ours\nx\n=======\ny\n>>>>>>> theirs\nc", merged.text());
		assertEquals(1, merged.conflicts());
	}

	@Test
	void lineEndsFollowWhoChangedThem() {
		String windows = BASE.replace("\n", "\r\n");
		String theirs = BASE.replace("within 0.5", "within 0.7");
		assertEquals(theirs.replace("\n", "\r\n"), clean(windows, theirs));
		assertEquals(theirs.replace("\n", "\r\n"), clean(theirs, windows));
	}
}
