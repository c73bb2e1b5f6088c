package padwright.drawing.dxf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.junit.jupiter.api.Test;

import padwright.drawing.scene.Anchor;
import padwright.drawing.scene.Circle;
import padwright.drawing.scene.Drawn;
import padwright.drawing.scene.Element;
import padwright.drawing.scene.Face;
import padwright.drawing.scene.FontMetrics;
import padwright.drawing.scene.Group;
import padwright.drawing.scene.Ink;
import padwright.drawing.scene.Line;
import padwright.drawing.scene.Rectangle;
import padwright.drawing.scene.RingSector;
import padwright.drawing.scene.Scene;
import padwright.drawing.scene.Stroke;
import padwright.drawing.scene.Style;
import padwright.drawing.scene.Text;
import padwright.drawing.scene.Transform;

/**
 * The file is read back group by group, by the codes of the published DXF reference of release 12: 0 begins an entity,
 * 8 its layer, 6 its line type, 10/20 and 11/21 points, 40 a radius or height, 50 an angle, 70 flags, 72 the alignment.
 */
class DxfWriterTest {

	private static final Style THIN = Style.stroked(Ink.BLACK, 0.2);

	/** An entity or what else begins with code 0: the last value of each code. */
	private record Entity(String kind, Map<Integer, String> groups) {

		double number(int code) {
			return Double.parseDouble(groups.get(code));
		}
	}

	private static List<Entity> read(Element... elements) {
		String file = DxfWriter.write(new Scene("F♯", 200, 100, List.of(elements)));
		assertTrue(file.chars().allMatch(letter -> letter == '\n' || letter >= ' ' && letter <= '~'), "ASCII");
		String[] lines = file.split("\n");
		assertEquals(0, lines.length % 2, "codes and values in pairs");
		List<Entity> entities = new ArrayList<>();
		for (int line = 0; line < lines.length; line += 2) {
			int code = Integer.parseInt(lines[line]);
			if (code == 0) {
				entities.add(new Entity(lines[line + 1], new HashMap<>()));
			} else if (!entities.isEmpty()) {
				entities.get(entities.size() - 1).groups().put(code, lines[line + 1]);
			}
		}
		assertEquals("EOF", entities.get(entities.size() - 1).kind());
		return entities;
	}

	private static List<Entity> all(String kind, List<Entity> entities) {
		return entities.stream().filter(entity -> entity.kind().equals(kind)).toList();
	}

	@Test
	void linesAndCirclesAreExactAndUpsideDown() {
		List<Entity> read = read(new Drawn(new Line(10, 20, 30.123456, 40), THIN),
				new Drawn(new Circle(50, 60, 7.1), Style.stroked(Stroke.of(Ink.BLACK, 0.1).dashed(0.5, 0.4))));
		Entity line = all("LINE", read).get(0);
		assertEquals(List.of(10.0, 80.0, 30.123456, 60.0),
				List.of(line.number(10), line.number(20), line.number(11), line.number(21)));
		assertEquals("CONTINUOUS", line.groups().get(6));
		Entity circle = all("CIRCLE", read).get(0);
		assertEquals(List.of(50.0, 40.0, 7.1), List.of(circle.number(10), circle.number(20), circle.number(40)));
		assertEquals("DASHED", circle.groups().get(6));
		assertEquals(List.of("CONTINUOUS", "DASHED"),
				all("LTYPE", read).stream().map(type -> type.groups().get(2)).toList());
	}

	@Test
	void namedGroupsAreLayers() {
		List<Entity> read = read(new Drawn(new Circle(1, 1, 1), THIN),
				Group.named("side view", "", List.of(new Drawn(new Circle(2, 2, 2), THIN))).at(10, 0));
		assertEquals(List.of("0", "SIDE_VIEW"), all("CIRCLE", read).stream().map(circle -> circle.groups().get(8)).toList());
		assertEquals(12.0, all("CIRCLE", read).get(1).number(10));
		assertEquals(List.of("0", "SIDE_VIEW"),
				all("LAYER", read).stream().map(layer -> layer.groups().get(2)).toList());
	}

	@Test
	void rectanglesAreClosedOutlinesOfFourPoints() {
		List<Entity> read = read(new Drawn(new Rectangle(10, 20, 30, 5), THIN));
		assertEquals("1", all("POLYLINE", read).get(0).groups().get(70));
		assertEquals(4, all("VERTEX", read).size());
		assertEquals(1, all("SEQEND", read).size());
	}

	/** A ring is of curves that leave the circle by under 0.03 %, and pieces that leave the curves by 0.005 mm. */
	@Test
	void piecesOfCurvesStayOnTheCurve() {
		double radius = 12;
		List<Entity> points = all("VERTEX", read(new Drawn(new RingSector(50, 50, radius, radius + 5, 0, Math.PI), THIN)));
		assertTrue(points.size() > 20);
		for (int index = 1; index < points.size(); index++) {
			double x = (points.get(index - 1).number(10) + points.get(index).number(10)) / 2 - 50;
			double y = (points.get(index - 1).number(20) + points.get(index).number(20)) / 2 - 50;
			double from = Math.hypot(x, y);
			boolean isEdge = Math.abs(x) < 0.01;
			assertTrue(isEdge || Math.min(Math.abs(from - radius), Math.abs(from - radius - 5)) < 0.01, from + " mm");
		}
	}

	@Test
	void textIsAsHighAsItsCapitalsAlignedAndTurned() {
		Text text = Text.of("F♯ \\ 3", 10, 20, Face.CONDENSED, 4).anchored(Anchor.END);
		Group turned = new Group(Optional.empty(), Optional.empty(), Transform.rotation(-90), List.of(text));
		Entity read = all("TEXT", read(turned.at(50, 50))).get(0);
		assertEquals("F\\U+266F \\ 3", read.groups().get(1));
		assertEquals(4 * FontMetrics.CAPITAL_HEIGHT, read.number(40), 1e-6);
		assertEquals(90, read.number(50), 1e-6);
		assertEquals("2", read.groups().get(72), "aligned at its right end");
		assertEquals(List.of(70.0, 60.0), List.of(read.number(11), read.number(21)));
	}
}
