package padwright.language.systems;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Set;

import org.junit.jupiter.api.Test;

import padwright.engine.length.Length;
import padwright.engine.mechanism.TouchFeel;
import padwright.language.TestShop;
import padwright.model.keysystem.KeySystem;
import padwright.model.systems.EffectiveSystem;
import padwright.workup.mechanism.SystemFingering;
import padwright.workup.mechanism.SystemMechanism;

class SystemMechanismTest {

	@Test
	void keysOfOnePieceMoveTogetherAndKeepTheirHoles() {
		SystemMechanism system = of("""
				touch L3
				key Fs hole 14
				key Upper turns with Lower by L3 hole 13 at 200
				key Lower closes Fs hole 13 at 220
				note G4 : L3""");
		assertEquals(List.of("Fs", "Upper", "Lower"), system.moved(system.state(system.fingerings().get(0))));
		assertEquals(Set.of("Fs", "Upper", "Lower"), system.closedPads(system.state(system.fingerings().get(0))));
		assertEquals(List.of("Upper", "Lower", "Fs"), holes(system));
		assertEquals(2, system.mechanism().keys().size());
	}

	@Test
	void aFingerClosesTheOpeningOfItsOwnPerforatedCupOnly() {
		SystemMechanism system = of("""
				touch R1
				touch R2
				key F by R1 hole 14 cup 17 perforated 6
				key E by R2 closes F hole 14 cup 17
				note A4 : R1
				note B4 : R2
				note C5 : half R1""");
		assertEquals(List.of("{F=CLOSED, E=OPEN}", "{F=HALF, E=CLOSED}", "{F=HALF, E=OPEN}"), states(system));
	}

	@Test
	void aHoleWrittenByItselfIsCoveredByFingersAndByKeys() {
		SystemMechanism system = of("""
				touch L1
				touch Side
				hole H1 7 by L1 at 100
				hole H2 8 at 90
				key Ring by L1 closes Pad
				key Pad by Side over H2 cup 11
				note A4 : L1
				note B4 : Side
				note C5 : half L1""");
		assertEquals(List.of("{H2=CLOSED, H1=CLOSED}", "{H2=CLOSED, H1=OPEN}", "{H2=CLOSED, H1=HALF}"),
				states(system));
	}

	@Test
	void placesCountFromTheBody() {
		SystemMechanism system = of("""
				joint head long 100
				joint body long 300
				joint foot
				key A hole 5 on head at 90
				key C hole 5 on foot at 30 around 20
				key B hole 5 at 200
				key D hole 5""");
		assertEquals(List.of("A", "B", "C", "D"), holes(system));
		assertEquals(List.of("-10", "200", "330", "?"), system.holes().stream().map(hole -> hole.at()
				.map(at -> String.valueOf(at.nanometres() / 1_000_000)).orElse("?")).toList());
		assertEquals("foot", system.holes().get(2).joint().orElseThrow());
		assertEquals(new BigDecimal("20"), system.holes().get(2).around());
	}

	/** 25 + 0.5 · 30 grams; 0.1 mm of play, by hand. */
	@Test
	void springsAndPlayAreThoseOfTheSystem() {
		SystemMechanism system = of("""
				touch R1
				key Fs hole 14 spring 30 grams
				key F by R1 closes Fs ratio 0.5 play 0.1 hole 14 spring 25 grams""");
		TouchFeel feel = system.feel("R1");
		assertEquals(0, new BigDecimal("40").compareTo(feel.force()));
		assertEquals(Map.of("F", Length.ZERO, "Fs", Length.millimetres("0.1")), feel.lostMotion());
	}

	@Test
	void conditionsMayBeThatAKeyIsPressedOrNot() {
		SystemMechanism system = of("""
				touch Oct
				touch L3
				key Lever by Oct opens Low when G is pressed, High when G is not pressed
				key High closed hole 3 at 10
				key Low closed hole 3 at 20
				key G by L3 hole 12 at 30
				note A5 : Oct
				note G5 : Oct L3""");
		assertEquals(List.of("{High=OPEN, Low=CLOSED, G=OPEN}", "{High=CLOSED, Low=OPEN, G=CLOSED}"), states(system));
	}

	@Test
	void fingeringsOfOneNoteHaveNamesOfTheirOwn() {
		SystemMechanism system = of("""
				touch L1
				key A by L1
				note D4 : L1
				note D4 "side" :
				note D4 "side" : L1
				note D4 :
				note D4 +50 cents :""");
		assertEquals(List.of("D4", "D4/side", "D4/3", "D4/4", "D4 +50"),
				system.fingerings().stream().map(SystemFingering::name).toList());
	}

	@Test
	void whatATextStillLacksIsLeftOut() {
		SystemMechanism system = of("""
				touch L1
				touch L1
				touch Idle
				key A by L1 closes A, Missing, B when Missing is pressed
				key A
				key B turns with C
				key C turns with B
				key D turns with Missing over Missing
				hole A 5
				hole " " 5
				key
				note D4 : L1 Idle Missing half L1
				note H9 : L1""");
		assertEquals(List.of("D4", "H9"), system.fingerings().stream().map(SystemFingering::name).toList());
		system.review();
		system.feel("L1");
	}

	@Test
	void touchesThatASystemTakesAwayAreMissing() {
		TestShop shop = TestShop.of("a.keys", "system A {\n\ttouch L1\n\tkey K by L1\n\tnote D4 : L1\n}\n"
				+ "system B based on A {\n\tremove touch L1\n}\n");
		SystemMechanism system = SystemMechanism.of(EffectiveSystem.of(shop.document("a.keys").getSystems().get(1)));
		assertEquals(List.of("L1"), system.fingerings().get(0).missing());
		assertEquals(Map.of(), system.state(system.fingerings().get(0)).moved());
	}

	private static List<String> states(SystemMechanism system) {
		return system.fingerings().stream().map(fingering -> system.state(fingering).holes().toString()).toList();
	}

	private static List<String> holes(SystemMechanism system) {
		return system.holes().stream().map(hole -> hole.name()).toList();
	}

	private static SystemMechanism of(String rows) {
		KeySystem system = TestShop.of("a.keys", "unit mm\nsystem A {\n" + rows + "\n}\n").document("a.keys").getSystems()
				.get(0);
		return SystemMechanism.of(EffectiveSystem.of(system));
	}
}
