package padwright.workup.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;

import org.junit.jupiter.api.Test;

import padwright.engine.length.Length;
import padwright.model.plan.KeyService;
import padwright.model.plan.Round;
import padwright.workup.DemoPlan;
import padwright.workup.service.KeyJob;

class RoundEffectTest {

	private final DemoPlan demo = new DemoPlan();
	private final KeyService row = demo.row(demo.key("F"));

	@Test
	void agreesWithTheSolverOnItsOwnPieces() {
		Round round = demo.felt(row, ". 1 2 0.5");
		LevelAnswer level = demo.solved().keys().get(0).level().orElseThrow();
		level.solution().pieces().forEach(piece -> demo.shim(round,
				piece.thickness().toString().replace(" thou", ""), piece.arc().from().toString(),
				piece.arc().to().toString()));
		RoundEffect effect = effect(round).orElseThrow();
		assertEquals(level.solution().spreadBefore(), effect.before());
		assertEquals(Optional.of(level.solution().spreadAfter()), effect.after());
	}

	@Test
	void predictsNothingWithoutPieces() {
		RoundEffect effect = effect(demo.felt(row, ". . . .")).orElseThrow();
		assertEquals(Length.ZERO, effect.before());
		assertTrue(effect.after().isEmpty());
	}

	@Test
	void isNothingForReadingsThatCannotBeUsed() {
		assertTrue(effect(demo.felt(row, ". .")).isEmpty());
	}

	private Optional<RoundEffect> effect(Round round) {
		KeyJob job = demo.service().jobs().get(0);
		return RoundEffect.of(job, round);
	}
}
