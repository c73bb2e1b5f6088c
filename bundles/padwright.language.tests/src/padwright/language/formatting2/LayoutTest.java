package padwright.language.formatting2;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static padwright.language.EqualModels.assertEqualModels;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.LongStream;
import java.util.stream.Stream;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

import padwright.language.Examples;
import padwright.language.TestShop;
import padwright.model.plan.Document;

/** However the examples are laid out, they come out in one layout, with the same model and the same remarks. */
class LayoutTest {

	private static final int SCATTERINGS = 3;
	private static final DocumentFormatter FORMATTER = TestShop.LANGUAGE.getInstance(DocumentFormatter.class);

	static List<Path> examples() {
		return Examples.documents();
	}

	@ParameterizedTest
	@MethodSource("examples")
	void examplesAreLaidOutAlready(Path file) {
		assertEquals(Examples.text(file), format(file, Examples.text(file)));
	}

	@ParameterizedTest
	@MethodSource("examples")
	void anyLayoutComesOutTheSame(Path file) {
		String text = Examples.text(file);
		Document document = Examples.with(file, text).document(Examples.name(file));
		layouts(text).forEach(changed -> {
			String laidOut = format(file, changed);
			assertEquals(laidOut, format(file, laidOut));
			assertEquals(Layouts.remarks(text), Layouts.remarks(laidOut));
			assertEquals(lines(text), lines(laidOut));
			assertEqualModels(document, Examples.with(file, laidOut).document(Examples.name(file)));
		});
	}

	private static Stream<String> layouts(String text) {
		return Stream.concat(Stream.of(Layouts.squeezed(text), Layouts.onePerLine(text), text + "\n\n\n", text.strip()),
				LongStream.range(0, SCATTERINGS).mapToObj(seed -> Layouts.scattered(text, seed)));
	}

	/** The lines without remarks and those that are empty then; a remark may have got onto the line before. */
	private static List<String> lines(String text) {
		return text.lines().map(line -> line.replaceAll("\\s*//.*", "")).filter(line -> !line.isBlank()).toList();
	}

	/** A remark behind every word, and one on a line of its own before every word. */
	@ParameterizedTest
	@MethodSource("examples")
	void remarksAnywhereAreKept(Path file) {
		String text = Layouts.squeezed(Examples.text(file));
		for (String remark : List.of(" //!\n", "\n//  a remark\n", "\n\n\n// one\n\n\n\n//two \n\n")) {
			String remarked = text.replaceAll("(?<=[^ ]) (?=[a-z{}])", remark);
			Document document = Examples.with(file, remarked).document(Examples.name(file));
			String laidOut = format(file, remarked);
			assertEquals(laidOut, format(file, laidOut));
			assertEquals(Layouts.remarks(remarked), Layouts.remarks(laidOut));
			assertEqualModels(document, Examples.with(file, laidOut).document(Examples.name(file)));
		}
	}

	private static String format(Path file, String text) {
		return FORMATTER.format(TestShop.of(Examples.name(file), text).resource(Examples.name(file)));
	}
}
