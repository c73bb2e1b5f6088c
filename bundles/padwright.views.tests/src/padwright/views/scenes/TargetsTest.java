package padwright.views.scenes;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;

import org.junit.jupiter.api.Test;

import padwright.drawing.scene.Bounds;
import padwright.drawing.scene.Drawn;
import padwright.drawing.scene.Element;
import padwright.drawing.scene.Group;
import padwright.drawing.scene.Ink;
import padwright.drawing.scene.Rectangle;
import padwright.drawing.scene.Scene;
import padwright.drawing.scene.Style;
import padwright.drawing.scene.Transform;

class TargetsTest {

	/** b above, then a, c and d in a line below it. */
	private final Targets targets = Targets.of(new Scene("", 100, 100,
			List.of(box("a", 0, 50), box("b", 40, 0), box("c", 40, 52), box("d", 80, 50))));

	private static Element box(String id, double x, double y) {
		return Group.named(id, "box " + id, List.of(square())).at(x, y);
	}

	private static Element square() {
		return new Drawn(new Rectangle(0, 0, 10, 10), Style.filled(Ink.BLACK));
	}

	private static Optional<String> id(Optional<Target> target) {
		return target.map(Target::id);
	}

	@Test
	void tabGoesInDrawingOrderAndLeavesAtBothEnds() {
		assertEquals(Optional.of("a"), id(targets.next(Optional.empty(), 1)));
		assertEquals(Optional.of("d"), id(targets.next(Optional.empty(), -1)));
		assertEquals(Optional.of("c"), id(targets.next(Optional.of("b"), 1)));
		assertEquals(Optional.empty(), targets.next(Optional.of("d"), 1));
		assertEquals(Optional.empty(), targets.next(Optional.of("a"), -1));
	}

	@Test
	void arrowsGoToTheNearestThatWay() {
		assertEquals(Optional.of("c"), id(targets.toward(Optional.of("a"), 1, 0)));
		assertEquals(Optional.of("d"), id(targets.toward(Optional.of("c"), 1, 0)));
		assertEquals(Optional.of("b"), id(targets.toward(Optional.of("c"), 0, -1)));
		assertEquals(Optional.of("c"), id(targets.toward(Optional.of("b"), 0, 1)));
		assertEquals(Optional.empty(), targets.toward(Optional.of("a"), -1, 0));
		assertEquals(Optional.of("a"), id(targets.toward(Optional.empty(), 1, 0)));
	}

	@Test
	void aGroupIsAsLargeAsAllItsPartsWhereverTheyAreMoved() {
		Group turned = new Group(Optional.of("g"), Optional.empty(), new Transform(0, 1, -1, 0, 0, 0),
				List.of(square(), Group.of(List.of(square())).at(20, 0)));
		Target target = Targets.of(new Scene("", 1, 1, List.of(Group.of(List.of(turned)).at(100, 5)))).all().get(0);
		assertEquals("g", target.meaning());
		assertEquals(90, target.bounds().left(), 1e-9);
		assertEquals(5, target.bounds().top(), 1e-9);
		assertEquals(10, target.bounds().width(), 1e-9);
		assertEquals(30, target.bounds().height(), 1e-9);
	}

	@Test
	void nestedNamesStandForThemselves() {
		Group outer = Group.named("outer", "o", List.of(square(), box("inner", 50, 0)));
		Targets nested = Targets.of(new Scene("", 100, 100, List.of(outer)));
		assertEquals(new Bounds(0, 0, 10, 10), nested.named("outer").orElseThrow().bounds());
		assertEquals(new Bounds(50, 0, 10, 10), nested.named("inner").orElseThrow().bounds());
	}

	@Test
	void nothingHasNoExtent() {
		assertEquals(Optional.empty(), Extent.of(List.of(Group.of(List.of()))));
	}
}
