package padwright.model.systems;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.junit.jupiter.api.Test;

import padwright.engine.length.Length;
import padwright.model.Measure;
import padwright.model.keysystem.Bearing;
import padwright.model.keysystem.Coupling;
import padwright.model.keysystem.CupStyle;
import padwright.model.keysystem.Fingering;
import padwright.model.keysystem.Hole;
import padwright.model.keysystem.HoleChange;
import padwright.model.keysystem.HoleMake;
import padwright.model.keysystem.Joint;
import padwright.model.keysystem.Key;
import padwright.model.keysystem.KeyChange;
import padwright.model.keysystem.KeyFeatures;
import padwright.model.keysystem.KeyRemoval;
import padwright.model.keysystem.KeySystem;
import padwright.model.keysystem.KeySystemFactory;
import padwright.model.keysystem.NoteRemoval;
import padwright.model.keysystem.PadCup;
import padwright.model.keysystem.Posture;
import padwright.model.keysystem.Rod;
import padwright.model.keysystem.ToneHole;
import padwright.model.keysystem.Touch;
import padwright.model.keysystem.TouchChange;

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
		driver.getCloses().add(coupling);
	}

	private static Fingering note(KeySystem system, String name) {
		Fingering fingering = KEYS.createFingering();
		fingering.setNote(name);
		system.getFingerings().add(fingering);
		return fingering;
	}

	private static Touch touch(KeySystem system, String name) {
		Touch touch = KEYS.createTouch();
		touch.setName(name);
		system.getTouches().add(touch);
		return touch;
	}

	private static Joint joint(KeySystem system, String name, String length) {
		Joint joint = KEYS.createJoint();
		joint.setName(name);
		joint.setLength(length == null ? null : Measure.valueOf(length));
		system.getJoints().add(joint);
		return joint;
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
		Touch r1 = touch(base, "R1");
		Touch r2 = touch(base, "R2");
		f.setPosture(Posture.CLOSED);
		f.getTouches().add(r1);
		change(middle, f).setPosture(Posture.OPEN);
		change(top, f).getTouches().add(r2);
		assertEquals(Posture.OPEN, in(top, f).posture());
		assertEquals(List.of(r2), in(top, f).touches());
		assertEquals(List.of(r1), in(middle, f).touches());
	}

	@Test
	void whatNobodySaysHasTheUsualValueOrNone() {
		EffectiveKey key = in(base, f);
		assertEquals(Posture.OPEN, key.posture());
		assertEquals(Optional.empty(), key.joint());
		assertEquals(List.of(), key.touches());
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
		assertEquals(1, in(middle, f).closes().size());
		change(middle, f).setPosture(Posture.OPEN);
		assertEquals(e, in(middle, f).closes().get(0).getDriven());
		close(change(top, f), d);
		assertEquals(List.of(d), in(top, f).closes().stream().map(Coupling::getDriven).toList());
	}

	@Test
	void aChangeCanTakeAllCouplingsAway() {
		close(f, e);
		change(middle, f).setClosesNothing(true);
		assertTrue(in(top, f).closes().isEmpty());
		assertEquals(1, in(base, f).closes().size());
	}

	@Test
	void aChangeCanTakeTheTouchesAway() {
		f.getTouches().add(touch(base, "R1"));
		change(middle, f).setUntouched(true);
		assertEquals(List.of(), in(top, f).touches());
		assertEquals(1, in(base, f).touches().size());
	}

	@Test
	void aTouchIsAFingersOwnUnlessSaid() {
		Touch flat = touch(base, "TBb");
		assertEquals("TBb", EffectiveSystem.of(base).touch(flat).orElseThrow().finger());
		TouchChange change = KEYS.createTouchChange();
		change.setTouch(flat);
		change.setFinger("thumb");
		change.setLabel("thumb B♭");
		middle.getChanges().add(change);
		assertEquals("thumb", EffectiveSystem.of(top).touch(flat).orElseThrow().finger());
		assertEquals("thumb B♭", EffectiveSystem.of(top).touch(flat).orElseThrow().label());
		assertEquals("TBb", EffectiveSystem.of(base).touch(flat).orElseThrow().label());
	}

	@Test
	void placesAreMeasuredFromTheUpperEndOfTheMainJoint() {
		Joint head = joint(base, "head", "200 mm");
		joint(base, "body", "330 mm");
		Joint foot = joint(base, "foot", null);
		f.setPosition(Measure.valueOf("281 mm"));
		assertEquals("body", in(base, f).joint().orElseThrow().name());
		assertEquals(Optional.of(Length.millimetres("281")), in(base, f).place());
		f.setJoint(foot);
		assertEquals(Optional.of(Length.millimetres("611")), in(base, f).place());
		f.setJoint(head);
		assertEquals(Optional.of(Length.millimetres("81")), in(base, f).place());
	}

	@Test
	void withoutAJointCalledBodyTheFirstIsMeantAndUnknownLengthsLeavePlacesUnknown() {
		joint(base, "upper", null);
		Joint lower = joint(base, "lower", "250 mm");
		f.setPosition(Measure.valueOf("20 mm"));
		assertEquals(Optional.of(Length.millimetres("20")), in(base, f).place());
		f.setJoint(lower);
		assertEquals(Optional.empty(), in(base, f).place());
	}

	@Test
	void aKeyOverAHoleWrittenElsewhereHasItsMeasuresAndPlace() {
		Hole hole = KEYS.createHole();
		hole.setName("H");
		hole.setSize(KEYS.createToneHole());
		hole.getSize().setDiameter(Measure.valueOf("7 mm"));
		hole.getSize().setChimney(Measure.valueOf("3 mm"));
		hole.setPosition(Measure.valueOf("120 mm"));
		hole.setAround(BigDecimal.TEN);
		base.getHoles().add(hole);
		f.setOver(hole);
		assertEquals(Optional.of(Length.millimetres("7")), in(base, f).holeDiameter());
		assertEquals(Optional.of(Length.millimetres("3")), in(base, f).chimney());
		assertEquals(Optional.of(Length.millimetres("120")), in(base, f).position());
		assertEquals(BigDecimal.TEN, in(base, f).around());
		f.setAround(BigDecimal.ONE);
		assertEquals(BigDecimal.ONE, in(base, f).around());
		HoleChange wider = KEYS.createHoleChange();
		wider.setHole(hole);
		wider.setSize(KEYS.createToneHole());
		wider.getSize().setDiameter(Measure.valueOf("8 mm"));
		middle.getChanges().add(wider);
		assertEquals(Optional.of(Length.millimetres("8")), in(top, f).holeDiameter());
		assertEquals(Optional.of(Length.millimetres("3")), in(top, f).chimney());
	}

	@Test
	void aKeyWithoutCupAndHoleIsALeverAndAPieceStandsLikeItsWhole() {
		assertTrue(in(base, f).isLever());
		cup(f, "17 mm", null, null);
		assertEquals(List.of("F"), EffectiveSystem.of(base).pads().stream().map(EffectiveKey::name).toList());
		f.setPosture(Posture.CLOSED);
		e.setWhole(f);
		assertEquals(Posture.CLOSED, in(base, e).posture());
		assertEquals("F", in(base, e).whole().orElseThrow().name());
		f.setWhole(e);
		assertEquals(Optional.empty(), in(base, e).whole());
	}

	@Test
	void aPerforationIsThatOfAPerforatedCup() {
		cup(f, "17 mm", "3 mm", CupStyle.PERFORATED);
		f.getCup().setPerforation(Measure.valueOf("6 mm"));
		assertEquals(Optional.of(Length.millimetres("6")), in(base, f).perforation());
		cup(change(middle, f), "17 mm", null, CupStyle.PLAIN);
		assertEquals(Optional.empty(), in(top, f).perforation());
	}

	@Test
	void notesAreToldApartByCentsAndCanBeTakenAway() {
		Fingering usual = note(base, "C4");
		note(base, "C4").setLabel("side");
		note(base, "C4").setCents(new BigDecimal("50.0"));
		note(base, "D4");
		assertEquals(List.of("C4", "C4 +50", "D4"), List.copyOf(EffectiveSystem.of(base).fingerings().keySet()));
		NoteRemoval side = KEYS.createNoteRemoval();
		side.setNote("C4");
		side.setLabel("side");
		NoteRemoval quarter = KEYS.createNoteRemoval();
		quarter.setNote("C4");
		quarter.setCents(new BigDecimal("50"));
		NoteRemoval d = KEYS.createNoteRemoval();
		d.setNote("D4");
		middle.getRemovals().addAll(List.of(side, quarter, d));
		assertEquals(Map.of("C4", List.of(usual)), EffectiveSystem.of(top).fingerings());
	}

	@Test
	void theNearestPitchTemperatureAndTranspositionHold() {
		assertEquals(new BigDecimal("440"), EffectiveSystem.of(top).pitch());
		base.setPitch(new BigDecimal("442"));
		base.setTransposition(new BigDecimal("-5"));
		assertEquals(new BigDecimal("442"), EffectiveSystem.of(top).pitch());
		middle.setPitch(new BigDecimal("430"));
		assertEquals(new BigDecimal("430"), EffectiveSystem.of(top).pitch());
		assertEquals(EffectiveSystem.USUAL_TEMPERATURE, EffectiveSystem.of(top).temperature());
		base.setTemperature(new BigDecimal("24.5"));
		assertEquals(new BigDecimal("24.5"), EffectiveSystem.of(top).temperature());
		assertEquals(new BigDecimal("-5"), EffectiveSystem.of(top).transposition());
		assertEquals(BigDecimal.ZERO, EffectiveSystem.of(null).transposition());
	}

	@Test
	void rodsCarryTheKeysThatTheSystemHas() {
		Rod rod = KEYS.createRod();
		rod.setName("upper");
		for (Key key : List.of(f, e)) {
			Bearing bearing = KEYS.createBearing();
			bearing.setKey(key);
			rod.getBearings().add(bearing);
		}
		base.getRods().add(rod);
		remove(middle, e);
		assertEquals(2, EffectiveSystem.of(base).rod(rod).orElseThrow().bearings().size());
		assertEquals(List.of(f), EffectiveSystem.of(top).rod(rod).orElseThrow().bearings().stream()
				.map(Bearing::getKey).toList());
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
