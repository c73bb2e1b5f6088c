package padwright.workup.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;

import org.junit.jupiter.api.Test;

import padwright.engine.length.Length;
import padwright.engine.seating.SeatAnswer;
import padwright.model.SignedMeasure;
import padwright.model.plan.KeyService;
import padwright.model.plan.Round;
import padwright.workup.DemoPlan;
import padwright.workup.service.KeyJob;

class RoundEffectTest {

	private final DemoPlan demo = new DemoPlan();
	private final KeyService row = demo.row(demo.key("F"));

	@Test
	void agreesWithTheSolverOnWhatWasFelt() {
		Round round = demo.felt(row, ". 1 2 0.5");
		SeatAnswer seat = demo.solved().keys().get(0).level().orElseThrow().seat();
		RoundEffect effect = effect(round).orElseThrow();
		assertEquals(seat.gapNow(), effect.felt().band());
		assertEquals(seat.chanceNow(), effect.felt().chance());
		assertTrue(effect.after().isEmpty());
	}

	@Test
	void theNotedAnswerIsExpectedToDoWhatTheSolverSays() {
		Round round = demo.felt(row, ". . 1 .");
		SeatAnswer seat = demo.solved().keys().get(0).level().orElseThrow().seat();
		seat.place().forEach(piece -> demo.shim(round, piece.thickness().toString().replace(" thou", ""),
				piece.arc().from().toString(), piece.arc().to().toString()));
		round.setFull(seat.fullShims().signum() == 0 ? null
				: SignedMeasure.valueOf((seat.fullShims().signum() > 0 ? "+" : "-") + seat.fullShims().abs()));
		RoundEffect effect = effect(round).orElseThrow();
		assertEquals(effect.after(), Optional.of(effect.last()));
		assertEquals(seat.chance(), effect.last().chance(), 0.12);
		assertTrue(effect.last().chance() > effect.felt().chance(), effect.toString());
	}

	@Test
	void aDotNeverTellsThatNothingIsOpen() {
		PadGap gap = effect(demo.felt(row, ". . . .")).orElseThrow().felt();
		assertTrue(gap.chance() < 0.95, "chance " + gap.chance());
		assertTrue(gap.band().high().at(gap.widest()).isLongerThan(Length.thou("0.2")), gap.toString());
	}

	@Test
	void earlierRoundsCount() {
		demo.shim(demo.felt(row, ". . 1 ."), "1", "5", "7");
		Round second = demo.felt(row, ". . . .");
		PadGap both = effect(second).orElseThrow().felt();
		row.getRounds().remove(0);
		PadGap alone = effect(second).orElseThrow().felt();
		assertTrue(!both.band().equals(alone.band()), "the first round tells something");
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
