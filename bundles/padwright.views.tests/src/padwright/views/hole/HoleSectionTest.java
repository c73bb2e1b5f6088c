package padwright.views.hole;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;

import org.junit.jupiter.api.Test;

import padwright.drawing.scene.Scene;
import padwright.drawing.java2d.Hits;
import padwright.drawing.scene.Bounds;
import padwright.drawing.scene.Group;
import padwright.language.edit.TextEdit;
import padwright.views.Palette;
import padwright.views.layout.DrawnSystem;
import padwright.views.scenes.Targets;

/** What is done in the section through a hole, told by what it makes of the text. */
class HoleSectionTest {

	private static final String FLUTE = """
			unit mm
			system Flute {
				joint body long 300 bore 19
				joint foot long 100 bore 19 at 0, 18 at 100
				hole H 7 rim 1 chimney 3 at 60
				key A open hole 13 rim 1 chimney 2.5 cup 16 deep 3 arm 13 rise 2.5 at 100 // first
				key C over H cup 10
				key D hole 12 on foot at 50
				rod R from 80 to 120 carries A
			}
			""";
	private static final String OTHER = FLUTE + "system Other based on Flute {\n}\n";

	private DrawnSystem drawn = new DrawnSystem(FLUTE);
	private final HoleSectionEditing section = new HoleSectionEditing(() -> {
	}, this::write);

	HoleSectionTest() {
		section.show(drawn.layout());
	}

	private void write(List<TextEdit> edits) {
		drawn.write(edits);
		section.show(drawn.layout());
	}

	private void open(String text) {
		drawn = new DrawnSystem(text);
		section.show(drawn.layout());
	}

	private Bounds bounds(HoleSize size) {
		return Targets.of(HoleSectionScene.draw(section, Palette.light())).named(size.id()).orElseThrow().bounds();
	}

	/** From the right end of what a size is drawn as, or from its left one. */
	private void drag(HoleSize size, boolean fromLeft, double dx, double dy) {
		Bounds bounds = bounds(size);
		double x = fromLeft ? bounds.left() : bounds.right();
		assertTrue(section.grab(size, x, bounds.centreY()), size.inWords());
		section.drag(x + dx / 2, bounds.centreY() + dy / 2);
		section.drag(x + dx, bounds.centreY() + dy);
		section.drop();
	}

	private static String with(String old, String anew) {
		assertTrue(FLUTE.contains(old), old);
		return FLUTE.replace(old, anew);
	}

	@Test
	void everySizeFollowsTheMouseInTenths() {
		section.choose("key:A");
		drag(HoleSize.HOLE, false, 0.33, 0);
		assertEquals(with("hole 13 ", "hole 13.7 "), drawn.text());
		drag(HoleSize.HOLE, true, 0.35, 0);
		drag(HoleSize.RIM, true, -0.2, 0);
		drag(HoleSize.CHIMNEY, false, 0, -0.52);
		drag(HoleSize.CUP, false, 0.5, 0);
		drag(HoleSize.DEPTH, true, 0, 0.2);
		drag(HoleSize.RISE, true, 0, -1);
		drag(HoleSize.ARM, false, 1, 0);
		drag(HoleSize.BORE, false, -0.25, 0);
		assertEquals(with("key A open hole 13 rim 1 chimney 2.5 cup 16 deep 3 arm 13 rise 2.5",
				"key A open hole 13 rim 1.2 chimney 3 cup 17 deep 2.8 arm 14 rise 3.5").replace("300 bore 19",
						"300 bore 18.5"), drawn.text());
	}

	@Test
	void theFigureIsShownAndNothingWrittenWhileDragging() {
		section.choose("key:A");
		section.grab(HoleSize.CUP, bounds(HoleSize.CUP).right(), 0);
		section.drag(bounds(HoleSize.CUP).right() + 1, 0);
		assertEquals(Optional.of("Cup 18 mm"), section.figure());
		assertEquals(FLUTE, drawn.text());
		section.cancel();
		section.drop();
		assertEquals(FLUTE, drawn.text());
	}

	@Test
	void theSizesOfAHoleUnderACupAreTheHoles() {
		section.choose("hole:H");
		assertEquals("key:C", section.section().orElseThrow().item().id());
		section.nudge(HoleSize.RIM, 2);
		section.nudge(HoleSize.CUP, 10);
		assertEquals(with("hole H 7 rim 1 ", "hole H 7 rim 1.2 ").replace("cup 10", "cup 11"), drawn.text());
	}

	@Test
	void whatIsNotSaidIsDrawnAsUsualAndWrittenWhenItIsChanged() {
		section.choose("key:D");
		assertFalse(section.section().orElseThrow().sizes().get(HoleSize.ARM).isKnown());
		section.nudge(HoleSize.CHIMNEY, 1);
		assertEquals(with("hole 12 on", "hole 12 chimney 2.6 on"), drawn.text());
		assertTrue(section.type(HoleSize.CUP, "15,5"));
		assertTrue(drawn.text().contains("hole 12 chimney 2.6 cup 15.5 on"), drawn.text());
		assertFalse(section.type(HoleSize.CUP, "wide"));
		assertFalse(section.type(HoleSize.CUP, "-1"));
	}

	@Test
	void aTaperingBoreGetsAPointAtTheHole() {
		section.choose("key:D");
		assertEquals(18.5, section.section().orElseThrow().mm(HoleSize.BORE), 1e-9);
		section.nudge(HoleSize.BORE, 1);
		assertEquals(with("19 at 0, 18 at 100", "19 at 0, 18.6 at 50, 18 at 100"), drawn.text());
		section.nudge(HoleSize.BORE, 1);
		assertEquals(with("19 at 0, 18 at 100", "19 at 0, 18.7 at 50, 18 at 100"), drawn.text());
	}

	@Test
	void whatIsInheritedIsChangedHere() {
		open(OTHER);
		section.choose("key:A");
		section.nudge(HoleSize.RIM, 1);
		assertEquals(OTHER.replace("Flute {\n}\n", "Flute {\n\tchange A hole 13 rim 1.1\n}\n"), drawn.text());
		section.nudge(HoleSize.BORE, -5);
		assertTrue(drawn.text().endsWith("\tchange joint body bore 18.5\n}\n"), drawn.text());
	}

	@Test
	void nothingIsWrittenWhileTheTextHasAFault() {
		section.show(drawn.layout().with("line 3: expected a number"));
		section.nudge(HoleSize.HOLE, 1);
		assertFalse(section.grab(HoleSize.HOLE, 0, 0));
		assertEquals(FLUTE, drawn.text());
	}

	@Test
	void everySizeIsHitWhereItIsDrawn() {
		for (String id : List.of("key:A", "key:C", "key:D")) {
			section.choose(id);
			Scene scene = HoleSectionScene.draw(section, Palette.light());
			assertEquals(section.section().orElseThrow().sizes().size(), Targets.of(scene).all().size());
			for (HoleSize size : HoleSize.values()) {
				Bounds bounds = bounds(size);
				assertTrue(Hits.at(scene, bounds.right() - 0.3, bounds.centreY(), 0.5).flatMap(Group::id).isPresent()
						|| Hits.at(scene, bounds.left() + 0.3, bounds.centreY(), 0.5).isPresent(), size.inWords());
				assertTrue(bounds.left() >= 0 && bounds.right() <= scene.width() && bounds.top() >= 0
						&& bounds.bottom() <= scene.height(), id + " " + size + " " + bounds);
			}
		}
	}

	@Test
	void holesAreInTheirOrderAlongTheTube() {
		assertEquals(List.of("C", "A", "D"), section.holes().stream().map(each -> each.label()).toList());
		assertEquals("key:C", section.section().orElseThrow().item().id());
	}
}
