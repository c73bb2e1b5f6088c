package padwright.views.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import padwright.drawing.font.DejaVuMetrics;
import padwright.drawing.scene.Bounds;
import padwright.drawing.scene.Element;
import padwright.drawing.scene.Group;
import padwright.drawing.scene.Text;
import padwright.views.Palette;

/** Names in a crowded drawing: whatever is written can be read. */
class LayoutLabelsTest {

	private final DrawnSystem crowded = new DrawnSystem(text());

	/** Vents with long names beside cups that overlap, and a row of touches. */
	private static String text() {
		StringBuilder text = new StringBuilder("unit mm\nsystem Crowded {\n\tjoint body long 600 bore 19\n");
		for (int number = 1; number <= 20; number++) {
			text.append("\ttouch T" + number + " \"touch of the vent " + number + "\"\n");
			text.append("\tkey V" + number + " \"quarter vent " + number + "\" closed by T" + number
					+ " hole 5 cup 7.5 at " + (100 + 20 * number) + " around -110\n");
			text.append("\tkey K" + number + " \"K" + number + "\" open hole 13 cup 17 at " + (95 + 15 * number) + "\n");
		}
		return text.append("}\n").toString();
	}

	private Map<String, Text> names(double least) {
		return LayoutLabels.of(crowded.editing.picture().lettered(least));
	}

	private static List<Text> texts(List<Element> elements) {
		List<Text> texts = new ArrayList<>();
		for (Element element : elements) {
			if (element instanceof Text text) {
				texts.add(text);
			} else if (element instanceof Group group) {
				texts.addAll(texts(group.elements()));
			}
		}
		return texts;
	}

	private static Bounds bounds(Text text) {
		double wide = new DejaVuMetrics().width(text.text(), text.face(), text.size());
		return new Bounds(text.x() - wide / 2, text.baseline() - text.size() * 0.7, wide, text.size() * 0.7);
	}

	@ParameterizedTest
	@ValueSource(doubles = {1, 4, 8, 14})
	void nothingIsWrittenSmallerThanCanBeRead(double least) {
		crowded.editing.select(Set.of("key:V7"));
		List<Text> texts = texts(LayoutScene.draw(crowded.editing.picture().lettered(least), Palette.light()).elements());
		assertFalse(texts.isEmpty());
		texts.forEach(text -> assertTrue(text.size() >= least, text.text() + " is " + text.size() + " mm"));
	}

	@ParameterizedTest
	@ValueSource(doubles = {0, 4, 8, 14})
	void noNameMeetsAnother(double least) {
		List<Text> names = List.copyOf(names(least).values());
		for (int one = 0; one < names.size(); one++) {
			for (int other = one + 1; other < names.size(); other++) {
				assertFalse(bounds(names.get(one)).overlaps(bounds(names.get(other))),
						names.get(one).text() + " meets " + names.get(other).text());
			}
		}
	}

	@Test
	void thereAreMoreNamesTheNearerOneLooks() {
		int items = crowded.layout().items().size();
		assertEquals(items, names(0).size());
		assertTrue(names(8).size() < items && names(14).size() <= names(8).size());
		assertTrue(names(14).size() > 10, names(14).keySet().toString());
	}

	@Test
	void whatIsChosenAlwaysHasItsName() {
		Set<String> left = names(14).keySet();
		String without = crowded.layout().items().stream().map(LayoutItem::id).filter(id -> !left.contains(id)).findFirst()
				.orElseThrow();
		crowded.editing.select(Set.of(without));
		assertTrue(names(14).containsKey(without));
	}
}
