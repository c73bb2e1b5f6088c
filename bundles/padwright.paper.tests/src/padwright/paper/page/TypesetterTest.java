package padwright.paper.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.SplittableRandom;

import org.junit.jupiter.api.Test;

import padwright.drawing.font.DejaVuMetrics;
import padwright.drawing.scene.Face;
import padwright.drawing.scene.Text;

class TypesetterTest {

	private final DejaVuMetrics metrics = new DejaVuMetrics();
	private final Typesetter typesetter = new Typesetter(metrics);

	@Test
	void wrappedLinesFitAndLoseNothing() {
		SplittableRandom random = new SplittableRandom(4);
		for (int round = 0; round < 300; round++) {
			String text = words(random);
			double width = random.nextDouble(6, 60);
			List<String> lines = typesetter.wrap(text, Face.CONDENSED, 3, width);
			for (String line : lines) {
				assertTrue(metrics.width(line, Face.CONDENSED, 3) <= width, line);
			}
			assertEquals(text.replace(" ", ""), String.join("", lines).replace(" ", ""));
		}
	}

	@Test
	void aSingleLineFitsOrIsCut() {
		SplittableRandom random = new SplittableRandom(5);
		for (int round = 0; round < 300; round++) {
			String text = words(random);
			double width = random.nextDouble(6, 60);
			Text line = typesetter.line(text, 0, 0, Face.BOLD, 4, width);
			assertTrue(metrics.width(line) <= width, line.text());
			boolean whole = line.text().equals(text);
			assertTrue(whole || line.text().endsWith("…") && line.size() < 4, line.text());
		}
	}

	@Test
	void cutParagraphsSaySo() {
		List<String> lines = typesetter.wrap("one two three four five six", Face.REGULAR, 3, 15, 2);
		assertEquals(2, lines.size());
		assertTrue(lines.get(1).endsWith("…"), lines.toString());
		assertEquals(List.of("one"), typesetter.wrap("one", Face.REGULAR, 3, 15, 2));
		assertEquals(List.of(), typesetter.wrap(" ", Face.REGULAR, 3, 15));
	}

	private static String words(SplittableRandom random) {
		StringBuilder text = new StringBuilder();
		for (int word = random.nextInt(1, 9); word > 0; word--) {
			text.append(text.isEmpty() ? "" : " ");
			for (int letter = random.nextInt(1, 20); letter > 0; letter--) {
				text.append((char) random.nextInt('a', 'z' + 1));
			}
		}
		return text.toString();
	}
}
