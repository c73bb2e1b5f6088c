package padwright.language.formatting2;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import padwright.language.TestShop;

class DocumentFormatterTest {

	private static void assertFormat(String expected, String text) {
		assertEquals(expected, format(text));
		assertEquals(expected, format(expected));
	}

	private static String format(String text) {
		return TestShop.LANGUAGE.getInstance(DocumentFormatter.class)
				.format(TestShop.of("shop.plan", text).resource("shop.plan"));
	}

	@Test
	void eachStatementHasALine() {
		assertFormat("""
				unit mm

				plan Spring "Spring service" for Flute serial "A-1" with Bench {
					date 2026-03-02
					seat within 0.5 thou
					bed 13..16 thou
					player "P" { tone bright saliva mild home 24 °C 60 %RH }
					fit Hard on Disc with Clear glue Shellac
					read at 12 3 6 9
					key A found worn fit Soft empty 15 15 thou stack 7.5 felt . 1 shim 1 from 2 to 4, 2 from 5 to 6 remark "r"
					key B
					regulate A > B : 1 thou light at driven
				}
				""", """
				unit   mm plan Spring"Spring service"for Flute serial "A-1" with Bench{date 2026-03-02 seat within
				0.5    thou bed 13..16 thou player "P"{tone bright saliva mild home 24 °C 60 %RH}fit Hard on Disc with
				Clear glue Shellac read at 12 3 6 9 key A found worn fit Soft empty 15 15 thou stack 7.5 felt . 1
				shim 1 from 2 to 4,2 from 5 to 6 remark "r" key B regulate A>B:1 thou light at driven}""");
	}

	@Test
	void laterRoundsHaveIndentedLines() {
		assertFormat("""
				plan Spring for Flute {
					key A felt . 1 shim 1 from 2 to 4
						felt at 12 6 : . 0.5 shim 0.5 from 3 to 4
						felt . . shim none remark "done"
					key B felt . .
				}
				""", """
				plan Spring for Flute {
				key A felt . 1 shim 1 from 2 to 4 felt at 12 6:. 0.5 shim 0.5 from 3 to 4


				felt . . shim none remark "done" key B
					felt . .
				}""");
	}

	@Test
	void aStockIsLaidOut() {
		assertFormat("""
				stock Bench "Main bench" {
					bench -5 °C 45 %RH
					material paper { expands 1..2 ppm/K animal hazard H317, H315 source "a" }
					pad Hard {
						kind felt
						base paper 2 thou
						thick 98 thou +- 1 thou
						diameters 16 16.5*8 mm
						needs backing
						price 3
					}
					film Clear paper { 1*3 2 thou } price 0.1
					rule "x" warn when not (key is A or pad is Hard) and stack.sum >= 3 thou
				}
				""", """
				stock Bench "Main bench" { bench - 5 °C 45 %RH material paper { expands 1..2 ppm/K animal hazard H317
				, H315 source "a" } pad Hard { kind felt base paper 2 thou thick 98 thou +- 1 thou diameters 16 16.5 * 8
				mm needs backing price 3 } film Clear paper {1 *3 2 thou} price 0.1 rule "x" warn when not ( key is A or pad
				is Hard ) and stack . sum >= 3 thou }
				""");
	}

	@Test
	void remarksStayWhereTheyBelong() {
		assertFormat("""
				// at the start
				// and more

				// before the unit
				unit mm // the unit

				// before the block
				system A { // behind the brace
					// before a key
					key F hole 14 // measured twice
						cup 17
					key E // at the end

					// apart
					// before the brace
				} // behind the block
				// at the end
				""", """


				// at the start
				  // and more



				// before the unit
				unit mm    // the unit
				// before the block
				system A {// behind the brace
				// before a key
				key F hole 14 // measured twice
				cup 17 key E // at the end



				// apart
				    // before the brace
				}// behind the block
				// at the end""");
	}

	@Test
	void anEmptyLineIsKeptAndMoreAreNot() {
		assertFormat("""
				system A {
					key F

					key E
					key D
				}

				system B {
				}
				""", """
				system A {
					key F


					key E
					key D
				}
				system B {
				}



				""");
	}

	@Test
	void blanksInTextsAndRemarksStay() {
		assertFormat("""
				system A "two  blanks" { //  two  blanks
				}
				""", "system A   \"two  blanks\"   {   //  two  blanks   \n}");
	}

	@Test
	void valuesOfSeveralWordsAreJoined() {
		assertFormat("""
				plan P for A {
					seat within 0.5 thou
					fit Bench.Hard
				}
				""", "plan P for A { seat within 0.5\n\t\tthou fit Bench . Hard }");
		assertFormat("""
				plan P for A {
					seat within 0.5 // half
				 thou
				}
				""", "plan P for A { seat within 0.5 // half\n thou }");
	}

	@Test
	void unusualBlanksBecomeBlanks() {
		assertFormat("system A {\n\tkey F\n}\n", "\uFEFFsystem\u00A0A { \u00A0key\tF\n}\n");
	}

	@Test
	void linesEndAsTheyDid() {
		assertFormat("// a\r\nsystem A {\r\n\tkey F // b\r\n\tkey G\r\n}\r\n",
				"// a\r\nsystem A { key F // b\r\nkey G\r\n}");
	}

	@ParameterizedTest
	@ValueSource(strings = { "system A {\n\tkey F   quickly\n}", "plan", "}", "system A { key", "@" })
	void textWithMistakesIsLeftAsItIs(String text) {
		assertEquals(text, format(text));
	}

	@ParameterizedTest
	@ValueSource(strings = { "", "// only a remark\n" })
	void textWithoutWordsIsLeftAsItIs(String text) {
		assertEquals(text, format(text));
	}
}
