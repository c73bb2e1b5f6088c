package padwright.language.systems;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

import padwright.engine.mechanism.HoleState;
import padwright.engine.mechanism.MechanismState;
import padwright.workup.mechanism.SystemMechanism;

/**
 * Every fingering of every shipped system leaves the holes open that it is meant to. The tables say for each what each
 * finger closes and opens in the end, without any coupling: they were not made with the code under test.
 */
class FingeringTablesTest {

	static Set<String> systems() {
		return ShippedSystems.all().keySet();
	}

	@ParameterizedTest
	@MethodSource("systems")
	void openHolesAreThoseOfTheTable(String name) {
		SystemMechanism system = ShippedSystems.all().get(name);
		assertEquals(String.join("\n", ShippedSystems.lines(name + ".fingerings")), table(system));
	}

	/** A line for each fingering, as the tables have it. */
	static String table(SystemMechanism system) {
		return system.fingerings().stream().map(fingering -> fingering.name() + " :" + open(system.state(fingering)))
				.collect(Collectors.joining("\n"));
	}

	@ParameterizedTest
	@MethodSource("systems")
	void noFingeringIsContradictory(String name) {
		SystemMechanism system = ShippedSystems.all().get(name);
		system.fingerings().forEach(fingering -> {
			assertEquals(List.of(), system.state(fingering).contradictions(), fingering.name());
			assertEquals(List.of(), fingering.missing(), fingering.name());
		});
	}

	private static String open(MechanismState state) {
		Map<String, HoleState> holes = state.holes();
		return state.sounding().stream().map(hole -> holes.get(hole) == HoleState.HALF ? " half " + hole : " " + hole)
				.collect(Collectors.joining());
	}
}
