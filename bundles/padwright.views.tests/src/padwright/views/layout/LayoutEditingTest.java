package padwright.views.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import org.junit.jupiter.api.Test;

import padwright.drawing.java2d.Hits;
import padwright.drawing.scene.Element;
import padwright.drawing.scene.Group;
import padwright.drawing.scene.Scene;
import padwright.views.Palette;
import padwright.views.scenes.Target;
import padwright.views.scenes.Targets;

/** What is done in a layout, told by what it makes of the text. */
class LayoutEditingTest {

	private final DrawnSystem flute = new DrawnSystem(DrawnSystem.FLUTE);

	private static String withLine(String old, String anew) {
		assertTrue(DrawnSystem.FLUTE.contains(old), old);
		return DrawnSystem.FLUTE.replace(old, anew);
	}

	private DrawnSystem chosen(String... ids) {
		flute.editing.select(new LinkedHashSet<>(List.of(ids)));
		return flute;
	}

	@Test
	void draggingMovesInTenthsAndKeepsTheAngle() {
		flute.drag("key:A", 7.37, 0.3);
		assertEquals(withLine("cup 16 at 100 //", "cup 16 at 107.4 //"), flute.text());
		assertEquals(Set.of("key:A"), flute.editing.selected());
	}

	@Test
	void draggingRoundTheTubeTurns() {
		flute.drag("key:B", 0, 19 * Math.PI / 360 * 30.2);
		assertEquals(withLine("at 140 around 20", "at 140 around 50"), flute.text());
	}

	@Test
	void neighboursAndEqualSpacingAreMeant() {
		flute.drag("key:A", 39.4, 15);
		assertTrue(flute.text().contains("cup 16 at 140 around"), flute.text());
		DrawnSystem equal = new DrawnSystem(DrawnSystem.FLUTE);
		equal.drag("hole:H", 119.4, 0);
		assertTrue(equal.text().contains("hole H 7 at 180\n"), equal.text());
	}

	@Test
	void theFigureIsShownWhileDragging() {
		flute.editing.grab(Optional.of("key:A"), flute.x("key:A"), flute.y("key:A"), false);
		flute.editing.drag(flute.x("key:A") + 7.37, flute.y("key:A"), 1);
		assertEquals(Optional.of("107.4 mm on body, 0°"), flute.editing.figure());
		assertEquals(DrawnSystem.FLUTE, flute.text());
		flute.editing.cancel();
		flute.editing.drop(Optional.empty());
		assertEquals(DrawnSystem.FLUTE, flute.text());
	}

	@Test
	void whatIsSeenFromTheSideIsDraggedAlongTheTube() {
		LayoutGeometry geometry = LayoutGeometry.of(flute.editing.layout());
		double top = geometry.sideMiddle() - 19 / 2.0 - 2;
		assertTrue(flute.editing.click(geometry.x(100), top, false));
		assertEquals(Set.of("key:A"), flute.editing.selected());
		assertTrue(flute.editing.click(geometry.x(140), top, true));
		assertEquals(Set.of("key:A", "key:B"), flute.editing.selected());
		assertFalse(flute.editing.click(geometry.x(200), top, false));
		flute.editing.select(Set.of());
		flute.editing.grab(Optional.empty(), geometry.x(100), top, false);
		flute.editing.drag(geometry.x(107.37), top - 5, 1);
		flute.editing.drop(Optional.empty());
		assertEquals(withLine("cup 16 at 100 //", "cup 16 at 107.4 //"), flute.text());
	}

	@Test
	void severalAreDraggedTogether() {
		chosen("key:A", "key:B").drag("key:A", 10.04, 0);
		assertEquals(withLine("at 100 //", "at 110 //").replace("at 140", "at 150"), flute.text());
	}

	@Test
	void whatIsInheritedIsChangedHereAndTakenBack() {
		DrawnSystem other = new DrawnSystem(DrawnSystem.OTHER);
		other.drag("key:A", 8, 0);
		assertEquals(DrawnSystem.OTHER.replace("Flute {\n}\n", "Flute {\n\tchange A at 108\n}\n"), other.text());
		assertTrue(other.editing.canBeAsInherited());
		other.editing.asInherited();
		assertEquals(DrawnSystem.OTHER, other.text());
		assertFalse(other.editing.canBeAsInherited());
	}

	@Test
	void whatHasNoPlaceGetsOne() {
		double x = LayoutGeometry.of(flute.editing.layout()).x(200.04) - flute.x("key:Lever");
		flute.drag("key:Lever", x, flute.y("key:A") - flute.y("key:Lever"));
		assertTrue(flute.text().contains("key Lever at 200\n"), flute.text());
	}

	@Test
	void toolsPlaceThings() {
		flute.editing.take(LayoutTool.HOLE);
		assertTrue(flute.editing.click(LayoutGeometry.of(flute.editing.layout()).x(80.02), flute.y("key:A"), false));
		assertEquals(withLine("at 60\n", "at 60\n\thole H1 7 at 80\n"), flute.text());
		assertEquals(Set.of("hole:H1"), flute.editing.selected());
		assertEquals(LayoutTool.CHOOSE, flute.editing.tool());
		flute.editing.add(LayoutKind.CUP);
		assertTrue(flute.text().contains("\tkey K1 open over H1 cup 10\n"), flute.text());
	}

	@Test
	void everythingCanBeAddedFromTheKeyboard() {
		chosen("key:A").editing.add(LayoutKind.KEY);
		assertTrue(flute.text().contains("\tkey K1 open hole 13 cup 16 at 120\n"), flute.text());
		chosen("key:A", "key:B").editing.add(LayoutKind.ROD);
		assertTrue(flute.text().contains("\trod Rod1 from 92 to 148 around 0 carries A, B\n"), flute.text());
		chosen().editing.add(LayoutKind.TOUCH);
		assertTrue(flute.text().contains("\ttouch T3 at 150\n"), flute.text());
		flute.editing.add(LayoutKind.LEVER);
		assertTrue(flute.text().contains("\tkey Lever1 at 170\n"), flute.text());
	}

	@Test
	void couplingsAreDrawnFromOneToAnother() {
		flute.editing.link("key:A", "key:B");
		assertEquals(List.of(LayoutLink.Kind.CLOSES, LayoutLink.Kind.OPENS, LayoutLink.Kind.HOLDS), flute.asked());
		flute.editing.link(new LayoutLink("key:A", "key:B", LayoutLink.Kind.OPENS));
		assertEquals(withLine("open by T1 hole", "open by T1 opens B hole"), flute.text());
		flute.editing.grab(Optional.of("touch:T2"), flute.x("touch:T2"), flute.y("touch:T2"), true);
		flute.editing.drag(flute.x("key:B"), flute.y("key:B"), 1);
		flute.editing.drop(Optional.of("key:B"));
		assertTrue(flute.text().contains("key B closed by T2 hole"), flute.text());
		flute.editing.link("touch:T1", "hole:H");
		assertTrue(flute.text().contains("hole H 7 by T1 at 60"), flute.text());
	}

	@Test
	void arrangementsMoveAllAtOnce() {
		chosen("hole:H", "key:A", "key:B").editing.arrange(Arrangement.ALIGN_AROUND);
		assertTrue(flute.text().contains("at 140 around 0"), flute.text());
		flute.editing.nudge(1, 0);
		assertTrue(flute.text().contains("at 140.1 around 0"), flute.text());
		chosen("key:A").drag("key:A", 12, 0);
		chosen("hole:H", "key:A", "key:B").editing.arrange(Arrangement.DISTRIBUTE);
		assertTrue(flute.text().contains("cup 16 at 100.1 //"), flute.text());
		chosen("touch:T2").editing.arrange(Arrangement.MIRROR);
		assertTrue(flute.text().contains("touch T2 at 50 around -40"), flute.text());
	}

	@Test
	void deletedAndPastedAgainIsTheSameText() {
		String copied = chosen("key:B").editing.copied();
		assertEquals("key B closed hole 13 cup 16 at 140 around 20", copied);
		flute.editing.paste(copied);
		assertTrue(flute.text().contains("\tkey B1 closed hole 13 cup 16 at 140 around 20\n"), flute.text());
		chosen("key:B", "key:B1").editing.delete();
		assertFalse(flute.text().contains("key B"), flute.text());
		flute.editing.paste(copied);
		assertTrue(flute.text().contains("\tkey B closed hole 13 cup 16 at 140 around 20\n"), flute.text());
	}

	@Test
	void aRectangleChoosesWhatIsInIt() {
		flute.editing.grab(Optional.empty(), flute.x("key:A") - 5, flute.y("key:A") - 5, false);
		flute.editing.drag(flute.x("key:B") + 5, flute.y("key:B") + 5, 1);
		flute.editing.drop(Optional.empty());
		assertEquals(Set.of("key:A", "key:B"), flute.editing.selected());
	}

	@Test
	void nothingIsWrittenWhileTheTextHasAFault() {
		flute.editing.show(flute.editing.layout().with("line 3: expected a number"));
		flute.drag("key:A", 10, 0);
		flute.editing.add(LayoutKind.HOLE);
		assertEquals(DrawnSystem.FLUTE, flute.text());
	}

	@Test
	void everythingIsHitWhereItIsDrawn() {
		Scene scene = LayoutScene.draw(flute.editing.picture(), Palette.light());
		Targets targets = Targets.of(scene);
		assertEquals(flute.editing.layout().items().size(), targets.all().size());
		for (LayoutItem item : flute.editing.layout().items()) {
			assertEquals(Optional.of(item.id()), Hits.at(scene, flute.x(item.id()), flute.y(item.id()), 0.5)
					.flatMap(Group::id));
		}
	}

	/** So that only that is painted anew while it is dragged. */
	@Test
	void whatIsDraggedAndWhatStaysAreTheWholeDrawing() {
		flute.editing.link(new LayoutLink("key:A", "key:B", LayoutLink.Kind.CLOSES));
		chosen("key:A").editing.grab(Optional.of("key:A"), flute.x("key:A"), flute.y("key:A"), false);
		flute.editing.drag(flute.x("key:A") + 12, flute.y("key:A"), 0);
		Scene still = LayoutScene.still(flute.editing.picture(), Palette.light());
		Scene moving = LayoutScene.moving(flute.editing.picture(), Palette.light());
		Scene all = LayoutScene.draw(flute.editing.picture(), Palette.light());
		assertEquals(List.of("key:A"), Targets.of(moving).all().stream().map(Target::id).toList());
		assertEquals(Targets.of(all).all().size() - 1, Targets.of(still).all().size());
		List<Element> together = new ArrayList<>(still.elements());
		together.addAll(moving.elements());
		assertEquals(all.elements().size(), together.size());
		assertEquals(new HashSet<>(all.elements()), new HashSet<>(together));
		assertEquals(all.width(), moving.width());
	}

	@Test
	void aPlaceIsInHalfTurns() {
		flute.drag("key:B", 0, 19 * Math.PI / 360 * 400);
		assertTrue(new BigDecimal(flute.text().split("at 140 around ")[1].split("\n")[0]).abs()
				.compareTo(BigDecimal.valueOf(180)) <= 0, flute.text());
	}
}
