package padwright.workup.service;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.util.Optional;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import padwright.engine.clock.ClockHour;
import padwright.model.keysystem.ClockConvention;
import padwright.model.keysystem.ClockReference;
import padwright.model.keysystem.HingeSide;
import padwright.model.keysystem.Key;
import padwright.model.keysystem.KeySystem;
import padwright.model.keysystem.KeySystemFactory;
import padwright.model.systems.EffectiveSystem;

class HingeHourTest {

	private final KeySystem system = KeySystemFactory.eINSTANCE.createKeySystem();
	private final Key key = KeySystemFactory.eINSTANCE.createKey();

	private HingeHour hinge(KeySystem of) {
		return HingeHour.of(of, EffectiveSystem.of(of).key(key).orElseThrow());
	}

	private static ClockHour hour(String hour) {
		return ClockHour.ofHour(new BigDecimal(hour));
	}

	private static ClockConvention clock(String hour, String reference) {
		ClockConvention clock = KeySystemFactory.eINSTANCE.createClockConvention();
		clock.setHour(hour(hour));
		clock.setReference(ClockReference.get(reference));
		return clock;
	}

	@Test
	void twelveLooksAtTheHingeWhereNothingIsSaid() {
		system.getKeys().add(key);
		assertEquals(new HingeHour(hour("12"), false), hinge(system));
	}

	/** Seen from the pad side the hours run from the head over the player's side to the foot. */
	@ParameterizedTest
	@CsvSource({ "6, hinge, far, 6, false", "12, head, near, 3, false", "12, head, far, 9, false",
			"12, foot, near, 9, false", "12, foot, far, 3, false", "1.5, head, , 4.5, true" })
	void theClockIsReadByWhatItLooksAt(String hour, String reference, String side, String expected, boolean assumed) {
		system.getKeys().add(key);
		system.setClock(clock(hour, reference));
		Optional.ofNullable(side).map(HingeSide::get).ifPresent(key::setHinge);
		assertEquals(new HingeHour(hour(expected), assumed), hinge(system));
	}

	@Test
	void theInnermostConventionHolds() {
		system.getKeys().add(key);
		system.setClock(clock("3", "hinge"));
		KeySystem inner = KeySystemFactory.eINSTANCE.createKeySystem();
		inner.setBase(system);
		assertEquals(hour("3"), hinge(inner).hour());
		inner.setClock(clock("6", "hinge"));
		assertEquals(hour("6"), hinge(inner).hour());
	}
}
