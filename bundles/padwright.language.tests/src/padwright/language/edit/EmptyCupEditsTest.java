package padwright.language.edit;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.stream.Stream;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import padwright.engine.length.Length;
import padwright.language.TestShop;
import padwright.model.plan.KeyService;

/** Gaps find their place in a row, whatever else it says. */
class EmptyCupEditsTest {

	@ParameterizedTest
	@CsvSource(delimiter = '|', textBlock = """
			key A                                        | key A empty 15 14.5
			key A found worn nick at 4 5 warped          | key A found worn nick at 4 5 warped empty 15 14.5
			key A play 3 thou spring 30 grams stack 15   | key A play 3 thou spring 30 grams empty 15 14.5 stack 15
			key A spring 30 grams fit P felt . .         | key A spring 30 grams fit P empty 15 14.5 felt . .
			key A warped delivered . .                   | key A warped empty 15 14.5 delivered . .
			key A remark "felt"                          | key A empty 15 14.5 remark "felt"
			key A empty 1 2 mm stack 15                  | key A empty 15 14.5 stack 15
			key A empty 15  14.5 felt . .                | key A empty 15  14.5 felt . .
			""")
	void gapsFindTheirPlace(String row, String expected) {
		assertEquals(plan(expected), TextEdit.apply(EmptyCupEdits.gaps(row(row), gaps()), plan(row)));
	}

	@ParameterizedTest
	@CsvSource(delimiter = '|', textBlock = """
			key A spring 30 grams                        | key A spring 30 grams stack 15 14.5
			key A nick at 4 warped felt . .              | key A nick at 4 warped stack 15 14.5 felt . .
			key A play 3 thou empty 1 2 delivered . .    | key A play 3 thou empty 1 2 stack 15 14.5 delivered . .
			""")
	void soDoFullShims(String row, String expected) {
		assertEquals(plan(expected), TextEdit.apply(ShimEdits.stack(row(row), gaps()), plan(row)));
	}

	private static List<Length> gaps() {
		return Stream.of("15", "14.5").map(Length::thou).toList();
	}

	private static KeyService row(String row) {
		return TestShop.of("p.plan", plan(row)).document("p.plan").getPlans().get(0).getKeys().get(0);
	}

	private static String plan(String row) {
		return "system S { key A }\nstock Box { pad P { } }\nplan Q for S with Box {\n\tread at 12 6\n\t" + row.strip() + "\n}\n";
	}
}
