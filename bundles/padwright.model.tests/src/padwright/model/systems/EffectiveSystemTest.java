package padwright.model.systems;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;

import org.junit.jupiter.api.Test;

import padwright.engine.length.Length;
import padwright.model.Measure;
import padwright.model.keysystem.Coupling;
import padwright.model.keysystem.CupStyle;
import padwright.model.keysystem.Fingering;
import padwright.model.keysystem.HoleMake;
import padwright.model.keysystem.Joint;
import padwright.model.keysystem.Key;
import padwright.model.keysystem.KeyChange;
import padwright.model.keysystem.KeyFeatures;
import padwright.model.keysystem.KeyRemoval;
import padwright.model.keysystem.KeySystem;
import padwright.model.keysystem.KeySystemFactory;
import padwright.model.keysystem.PadCup;
import padwright.model.keysystem.Posture;
import padwright.model.keysystem.ToneHole;
import padwright.model.keysystem.Touch;

class EffectiveSystemTest {

	private static final KeySystemFactory KEYS = KeySystemFactory.eINSTANCE;

	private final KeySystem base = system("Base", null);
	private final KeySystem middle = system("Middle", base);
	private final KeySystem top = system("Top", middle);
	private final Key f = key(base, "F");
	private final Key e = key(base, "E");

	private static KeySystem system(String name, KeySystem base) {
		KeySystem system = KEYS.createKeySystem();
		system.setName(name);
		system.setBase(base);
		return system;
	}

	private static Key key(KeySystem system, String name) {
		Key key = KEYS.createKey();
		key.setName(name);
		system.getKeys().add(key);
		return key;
	}

	private static KeyChange change(KeySystem system, Key key) {
		KeyChange change = KEYS.createKeyChange();
		change.setKey(key);
		system.getChanges().add(change);
		return change;
	}

	private static void remove(KeySystem system, Key key) {
		KeyRemoval removal = KEYS.createKeyRemoval();
		removal.setKey(key);
		system.getRemovals().add(removal);
	}

	private static void cup(KeyFeatures features, String diameter, String depth, CupStyle style) {
		PadCup cup = KEYS.createPadCup();
		cup.setDiameter(Measure.valueOf(diameter));
		cup.setDepth(depth == null ? null : Measure.valueOf(depth));
		if (style != null) {
			cup.setStyle(style);
		}
		features.setCup(cup);
	}

	private static void close(KeyFeatures driver, Key driven) {
		Coupling coupling = KEYS.createCoupling();
		coupling.setDriven(driven);
		driver.getCouplings().add(coupling);
	}

	private static Fingering note(KeySystem system, String name) {
		Fingering fingering = KEYS.createFingering();
		fingering.setNote(name);
		system.getFingerings().add(fingering);
		return fingering;
	}

	private static List<String> names(KeySystem system) {
		return EffectiveSystem.of(system).keys().stream().map(EffectiveKey::name).toList();
	}

	private static EffectiveKey in(KeySystem system, Key key) {
		return EffectiveSystem.of(system).key(key).orElseThrow();
	}

	@Test
	void inheritedKeysComeFirst() {
		key(middle, "D");
		key(top, "C");
		assertEquals(List.of("F", "E", "D", "C"), names(top));
		assertEquals(List.of("F", "E"), names(base));
	}

	@Test
	void aRemovedKeyIsGoneFromThereOn() {
		remove(middle, f);
		assertEquals(List.of("E"), names(top));
		assertEquals(List.of("F", "E"), names(base));
		assertEquals(Optional.empty(), EffectiveSystem.of(top).key(f));
	}

	@Test
	void aKeyOfTheNameOfARemovedOneTakesItsPlaceAtTheEnd() {
		remove(middle, f);
		Key other = key(middle, "F");
		assertEquals(List.of("E", "F"), names(top));
		assertEquals(other, in(top, other).definition());
	}

	@Test
	void aChangeOfARemovedKeyDoesNotBringItBack() {
		remove(middle, f);
		change(top, f).setPosture(Posture.CLOSED);
		assertEquals(List.of("E"), names(top));
	}

	@Test
	void whatIsNotSaidIsInheritedFieldByField() {
		cup(f, "17 mm", "3 mm", CupStyle.PLAIN);
		cup(change(middle, f), "18 mm", null, null);
		cup(change(top, f), "19 mm", "3.5 mm", null);
		assertEquals(Optional.of(Length.millimetres("18")), in(middle, f).cupDiameter());
		assertEquals(Optional.of(Length.millimetres("3")), in(middle, f).cupDepth());
		assertEquals(Optional.of(Length.millimetres("19")), in(top, f).cupDiameter());
		assertEquals(Optional.of(Length.millimetres("3.5")), in(top, f).cupDepth());
		assertEquals(Optional.of(CupStyle.PLAIN), in(top, f).cupStyle());
		assertEquals(Optional.of(Length.millimetres("17")), in(base, f).cupDiameter());
	}

	@Test
	void theNearestChangeOfAFeatureHolds() {
		f.setPosture(Posture.CLOSED);
		f.setTouch(Touch.R1);
		change(middle, f).setPosture(Posture.OPEN);
		change(top, f).setTouch(Touch.R2);
		assertEquals(Posture.OPEN, in(top, f).posture());
		assertEquals(Optional.of(Touch.R2), in(top, f).touch());
		assertEquals(Optional.of(Touch.R1), in(middle, f).touch());
	}

	@Test
	void whatNobodySaysHasTheUsualValueOrNone() {
		EffectiveKey key = in(base, f);
		assertEquals(Posture.OPEN, key.posture());
		assertEquals(Joint.BODY, key.joint());
		assertEquals(Optional.empty(), key.touch());
		assertEquals(Optional.empty(), key.holeDiameter());
		assertEquals(Optional.empty(), key.holeMake());
		assertEquals("F", key.label());
		f.setLabel("low F");
		assertEquals("low F", key.label());
	}

	@Test
	void aHoleIsChangedFieldByFieldToo() {
		ToneHole hole = KEYS.createToneHole();
		hole.setDiameter(Measure.valueOf("14 mm"));
		hole.setMake(HoleMake.DRAWN);
		f.setHole(hole);
		ToneHole wider = KEYS.createToneHole();
		wider.setDiameter(Measure.valueOf("15 mm"));
		change(middle, f).setHole(wider);
		assertEquals(Optional.of(Length.millimetres("15")), in(middle, f).holeDiameter());
		assertEquals(Optional.of(HoleMake.DRAWN), in(middle, f).holeMake());
	}

	@Test
	void couplingsAreChangedAsAWhole() {
		close(f, e);
		Key d = key(middle, "D");
		assertEquals(1, in(middle, f).couplings().size());
		change(middle, f).setPosture(Posture.OPEN);
		assertEquals(e, in(middle, f).couplings().get(0).getDriven());
		close(change(top, f), d);
		assertEquals(List.of(d), in(top, f).couplings().stream().map(Coupling::getDriven).toList());
	}

	@Test
	void aChangeCanTakeAllCouplingsAway() {
		close(f, e);
		change(middle, f).setUncoupled(true);
		assertTrue(in(top, f).couplings().isEmpty());
		assertEquals(1, in(base, f).couplings().size());
	}

	@Test
	void fingeringsOfANoteAreReplacedTogether() {
		note(base, "D4");
		note(base, "D4");
		Fingering kept = note(base, "E4");
		Fingering own = note(top, "D4");
		assertEquals(List.of(own), EffectiveSystem.of(top).fingerings().get("D4"));
		assertEquals(List.of(kept), EffectiveSystem.of(top).fingerings().get("E4"));
		assertEquals(2, EffectiveSystem.of(middle).fingerings().get("D4").size());
	}

	@Test
	void aCircleIsCutWhereItCloses() {
		base.setBase(top);
		assertEquals(List.of(middle, top, base), List.copyOf(EffectiveSystem.lineage(base)));
		assertEquals(List.of(base, middle, top), List.copyOf(EffectiveSystem.lineage(top)));
		assertEquals(List.of("F", "E"), names(top));
	}

	@Test
	void withoutASystemThereIsNothing() {
		assertTrue(EffectiveSystem.of(null).keys().isEmpty());
		assertTrue(EffectiveSystem.lineage(null).isEmpty());
	}
}
