package padwright.views.map;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.StringWriter;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

import padwright.drawing.java2d.Hits;
import padwright.drawing.scene.Bounds;
import padwright.drawing.scene.Drawn;
import padwright.drawing.scene.Element;
import padwright.drawing.scene.Group;
import padwright.drawing.scene.Scene;
import padwright.drawing.scene.Text;
import padwright.drawing.svg.SvgWriter;
import padwright.model.keysystem.Coupling;
import padwright.model.keysystem.KeySystemFactory;
import padwright.views.Bench;
import padwright.views.Palette;
import padwright.views.layout.DrawnSystem;
import padwright.views.scenes.Target;
import padwright.views.scenes.Targets;
import padwright.workup.service.ServicePlan;

class KeyMapTest {

	/** Distance of the points that are tried, mm. */
	private static final double TOUCHED_EVERY = 1.25;

	static Stream<ServicePlan> examples() {
		return Bench.examples().stream().limit(4);
	}

	private static KeyState state(String row) {
		Bench bench = new Bench(row);
		return KeyMapState.of(bench.plan(), bench.findings()).keys().get(0).state();
	}

	@Test
	void statesFollowTheRow() {
		assertEquals(KeyState.ABSENT, state(""));
		assertEquals(KeyState.UNREAD, state("key A empty 15 15 15 15"));
		assertEquals(KeyState.READ, state("key A empty 15 15 15 15 felt . 0.5 . 1"));
		assertEquals(KeyState.SOLVED, state("key A felt . 0.5 . 1 shim 0.5 from 8 to 10"));
		assertEquals(KeyState.SOLVED, state("key A felt . . . . shim none"));
		assertEquals(KeyState.DONE, state("key A stack 7.5 7.5 felt . . . ."));
		assertEquals(KeyState.DONE, state("key A felt . 0.5 . . delivered . . . ."));
		assertEquals(KeyState.ERROR, state("key A stack 7.5 7.5 felt . . ."));
	}

	@Test
	void findingsBelongToTheirRow() {
		Bench bench = new Bench("key A felt . . .\nkey B felt . . . .");
		List<MapKey> keys = KeyMapState.of(bench.plan(), bench.findings()).keys();
		assertEquals(List.of(KeyState.ERROR, KeyState.READ, KeyState.ABSENT),
				keys.stream().map(MapKey::state).toList());
		assertTrue(keys.get(0).detail().contains("3 readings for 4 hours"), keys.get(0).detail());
	}

	@Test
	void couplingsAndPlacesComeFromTheSystem() {
		KeyMapState map = KeyMapState.of(new Bench("").plan(), List.of());
		assertEquals(List.of(new MapCoupling("A", MapCoupling.Effect.CLOSES, "B")), map.couplings());
		assertEquals(Optional.of(130.0), map.keys().get(1).position());
		assertEquals(Optional.empty(), map.keys().get(2).position());
		assertTrue(map.keys().get(2).isFar());
	}

	/** Half a turn around a bore of 20 mm is half its girth; a rod runs from post to post at its own angle. */
	@Test
	void anglesAndRodsAreUnrolled() {
		MapJoint joint = new MapJoint("body", 20, List.of(new MapJoint.Rod(10, 110, 90)), List.of());
		assertEquals(10 * Math.PI, joint.across(180), 1e-9);
		assertEquals(-5 * Math.PI, joint.across(-90), 1e-9);
		assertEquals(-5 * Math.PI, joint.across(270), 1e-9);
		Scene flat = KeyMapScene.draw(map(joint, 0), Palette.light(), Set.of(), 4);
		Scene turned = KeyMapScene.draw(map(joint, -90), Palette.light(), Set.of(), 4);
		assertEquals(5 * Math.PI, middle(flat, "B") - middle(flat, "A") - (middle(turned, "B") - middle(turned, "A")), 1e-6);
		Scene bare = KeyMapScene.draw(map(new MapJoint("body", 20, List.of(), List.of()), 0), Palette.light(), Set.of(), 4);
		assertEquals(3, flat.elements().stream().mapToInt(KeyMapTest::shapes).sum()
				- bare.elements().stream().mapToInt(KeyMapTest::shapes).sum(), "a rod and two posts");
	}

	private static KeyMapState map(MapJoint joint, double around) {
		return new KeyMapState("Two", List.of(key("A", 20, 0), key("B", 80, around)), List.of(), List.of(joint));
	}

	private static MapKey key(String name, double place, double around) {
		return new MapKey(name, name, "body", Optional.of(place), 14, Optional.empty(), Optional.empty(), around, false, "",
				KeyState.DRAWN, "");
	}

	private static double middle(Scene scene, String key) {
		Bounds bounds = Targets.of(scene).named(key).map(Target::bounds).orElseThrow();
		return (bounds.top() + bounds.bottom()) / 2;
	}

	private static int shapes(Element element) {
		return element instanceof Group group ? group.elements().stream().mapToInt(KeyMapTest::shapes).sum()
				: element instanceof Drawn ? 1 : 0;
	}

	@Test
	void whatAKeyDoesToOthersIsDrawnAndTold() {
		Bench bench = new Bench("");
		Coupling opens = KeySystemFactory.eINSTANCE.createCoupling();
		opens.setDriven(bench.system().getKeys().get(2));
		bench.system().getKeys().get(1).getOpens().add(opens);
		Coupling holds = KeySystemFactory.eINSTANCE.createCoupling();
		holds.setDriven(bench.system().getKeys().get(0));
		bench.system().getKeys().get(1).getHolds().add(holds);
		KeyMapState map = KeyMapState.of(bench.system(), List.of());
		assertEquals(List.of(MapCoupling.Effect.CLOSES, MapCoupling.Effect.OPENS, MapCoupling.Effect.HOLDS),
				map.couplings().stream().map(MapCoupling::effect).toList());
		assertTrue(map.keys().get(1).detail().matches("(?s).*Opens .*Holds .* shut.*"), map.keys().get(1).detail());
	}

	@Test
	void aSystemAloneIsDrawnWithItsFindings() {
		Bench bench = new Bench("");
		bench.system().getKeys().get(1).setName("A");
		KeyMapState map = KeyMapState.of(bench.system(), bench.findings());
		assertEquals("Flute", map.title());
		assertEquals(KeyState.ERROR, map.keys().get(1).state(), "two keys of one name");
		assertTrue(map.keys().get(1).detail().contains("A"), map.keys().get(1).detail());
		assertEquals(KeyState.DRAWN, map.keys().get(2).state());
		assertEquals("trill\nCup 8 mm", map.keys().get(2).detail());
	}

	@ParameterizedTest
	@MethodSource("examples")
	void everyCupIsDrawnLifeSizeAndCanBeTouched(ServicePlan plan) {
		KeyMapState map = KeyMapState.of(plan, List.of());
		for (double aspect : new double[] { 0.4, 4 }) {
			Scene scene = KeyMapScene.draw(map, Palette.light(), Set.of(), aspect);
			Targets targets = Targets.of(scene);
			assertEquals(map.keys().size(), targets.all().size());
			for (MapKey key : map.keys()) {
				Bounds bounds = targets.named(key.name()).map(Target::bounds).orElseThrow();
				assertTrue(bounds.width() >= key.cup() - 1e-6 && bounds.height() >= key.cup() - 1e-6);
				assertTrue(bounds.left() >= 0 && bounds.top() >= 0 && bounds.right() <= scene.width()
						&& bounds.bottom() <= scene.height());
				double touched = TOUCHED_EVERY * TOUCHED_EVERY * touches(scene, key.name(), bounds);
				assertTrue(touched > 0.8 * Math.PI / 4 * key.cup() * key.cup(), key.name() + " " + touched + " mm²");
			}
		}
	}

	private static long touches(Scene scene, String key, Bounds bounds) {
		long touches = 0;
		for (double x = bounds.left(); x < bounds.right(); x += TOUCHED_EVERY) {
			for (double y = bounds.top(); y < bounds.bottom(); y += TOUCHED_EVERY) {
				touches += Hits.at(scene, x, y, 0.01).flatMap(Group::id).equals(Optional.of(key)) ? 1 : 0;
			}
		}
		return touches;
	}

	/** An instrument may have no key at all; two holes may lie under one finger. */
	@Test
	void holesUnderFingersAreDrawnWithTheirTouches() {
		KeyMapState map = KeyMapState.of(new DrawnSystem("""
				unit mm
				system Pipe {
					joint body long 300 bore 19
					touch L1
					touch Pair by R4
					hole H1 7 by L1 at 100
					hole Low 5 by Pair at 200 around -20
					hole Lower 4 by Pair at 200 around 25
					hole Vent 3 at 50
				}
				""").layout().system().orElseThrow(), List.of());
		assertEquals(List.of("H1, covered by L1", "Low, covered by Pair", "Lower, covered by Pair"),
				map.joints().get(0).holes().stream().map(MapJoint.FingerHole::detail).toList());
		StringWriter svg = new StringWriter();
		SvgWriter.write(svg, KeyMapScene.draw(map, Palette.light(), Set.of(), 2));
		assertEquals(2, svg.toString().split(">Pair<", -1).length - 1);
		assertTrue(svg.toString().contains(">L1<"));
	}

	/** In mm of the instrument, so that they grow with the drawing, and large enough beside cups of 17 mm to be read. */
	@ParameterizedTest
	@MethodSource("examples")
	void labelsGrowWithTheDrawing(ServicePlan plan) {
		KeyMapState map = KeyMapState.of(plan, List.of());
		Set<String> labels = map.keys().stream().map(MapKey::label).collect(Collectors.toSet());
		for (double aspect : new double[] { 0.4, 4 }) {
			List<Text> written = texts(KeyMapScene.draw(map, Palette.light(), Set.of(), aspect).elements())
					.filter(text -> labels.contains(text.text())).toList();
			assertTrue(written.size() >= map.keys().size());
			assertTrue(written.stream().filter(text -> text.size() >= 4).map(Text::text).collect(Collectors.toSet())
					.containsAll(labels), written.toString());
		}
	}

	private static Stream<Text> texts(List<Element> elements) {
		return elements.stream().flatMap(element -> element instanceof Text text ? Stream.of(text)
				: element instanceof Group group ? texts(group.elements()) : Stream.empty());
	}

	@Test
	void theMapTurnsWithTheWindow() {
		KeyMapState map = KeyMapState.of(Bench.examples().get(0), List.of());
		Scene wide = KeyMapScene.draw(map, Palette.light(), Set.of(), 3);
		Scene tall = KeyMapScene.draw(map, Palette.light(), Set.of(), 0.3);
		assertTrue(wide.width() > wide.height());
		assertTrue(tall.width() < tall.height());
	}

	@Test
	void marksDifferByShape() {
		Palette grey = grey();
		List<KeyState> ofWork = Stream.of(KeyState.values()).filter(state -> state != KeyState.DRAWN).toList();
		long shapes = ofWork.stream().map(state -> StateMarks.draw(state, grey).elements()).distinct().count();
		assertEquals(ofWork.size(), shapes);
	}

	private static Palette grey() {
		Palette light = Palette.light();
		return new Palette(light.ground(), light.ink(), light.ink(), light.ink(), light.ink(), light.ink(), light.ink(),
				light.ink(), light.ink(), light.ink(), light.ink());
	}

	@Test
	void aMapWithoutKeysSaysSo() {
		assertEquals(List.of(), Targets.of(KeyMapScene.draw(KeyMapState.empty(), Palette.dark(), Set.of(), 2)).all());
	}
}
