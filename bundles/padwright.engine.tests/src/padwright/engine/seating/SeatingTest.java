package padwright.engine.seating;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;

import padwright.engine.clock.Arc;
import padwright.engine.clock.ClockHour;
import padwright.engine.closing.Hinge;
import padwright.engine.evidence.FeltReading;
import padwright.engine.evidence.FeltRound;
import padwright.engine.evidence.FilmInPlace;
import padwright.engine.evidence.PadModel;
import padwright.engine.evidence.RimCondition;
import padwright.engine.evidence.RimPrior;
import padwright.engine.film.FilmSupply;
import padwright.engine.film.PartialShim;
import padwright.engine.length.Length;
import padwright.engine.levelling.Lift;
import padwright.engine.levelling.Stiffness;
import padwright.engine.rim.FeelerSet;
import padwright.engine.rim.RimProfile;
import padwright.engine.closing.ClosedGap;

class SeatingTest {

	private static final Length SEAT = Length.thou("0.5");
	private static final FeelerSet LEAVES = new FeelerSet(
			Stream.of("0.5", "1", "1.5", "2", "3").map(Length::thou).toList());
	private static final List<FilmSupply> FILMS = Stream.of("0.5", "1", "1.5", "2", "3").map(Length::thou)
			.map(FilmSupply::unlimited).toList();
	private static final Stiffness RIGID = new Stiffness(0.1);

	private static PadModel pad(int hingeStation) {
		return new PadModel(RimPrior.of(RimCondition.TRUE), new Hinge(new ClockHour(hingeStation), 7 / 12.0),
				PadModel.REACH_ASSUMED, RIGID, PadModel.STIFFNESS_ASSUMED, PadModel.USUAL_FEEL);
	}

	/** Readings from 12 o'clock on, evenly; a dot drags. */
	private static FeltRound round(int turned, String... readings) {
		List<FeltReading> felt = new ArrayList<>();
		for (int i = 0; i < readings.length; i++) {
			ClockHour hour = new ClockHour((i * 24 / readings.length + turned) % 24);
			felt.add(readings[i].equals(".") ? FeltReading.drag(hour, LEAVES)
					: FeltReading.slide(hour, Length.thou(readings[i]), LEAVES));
		}
		return new FeltRound(felt, FilmInPlace.NONE);
	}

	private static SeatAnswer solve(PadModel pad, List<FilmSupply> films, FeltRound... rounds) {
		return Seating.solve(new SeatProblem(pad, List.of(rounds), FilmInPlace.NONE, films,
				List.of(Length.thou("0.5"), Length.thou("0.5").negated()), SEAT, Prices.USUAL));
	}

	@Test
	void putsFilmWhereTheLeafSlides() {
		SeatAnswer answer = solve(pad(0), FILMS, round(0, ".", ".", "0.5", "1", "1", "0.5", ".", "."));
		assertFalse(answer.nothing());
		assertTrue(answer.chance() > answer.chanceNow() + 0.3, () -> answer.toString());
		assertTrue(answer.place().stream().anyMatch(piece -> piece.arc().quarterHoursCoveredAt(10) == 2),
				() -> answer.toString());
	}

	@Test
	void neverSaysNoneWhileALeafAsThickAsTheSeatSlides() {
		String[] readings = { ".", "0.5", "1" };
		for (int pattern = 0; pattern < 81; pattern += 5) {
			String[] felt = { readings[pattern % 3], readings[pattern / 3 % 3], readings[pattern / 9 % 3],
					readings[pattern / 27 % 3] };
			SeatAnswer answer = solve(pad(0), FILMS, round(0, felt));
			boolean slides = Arrays.stream(felt).anyMatch(reading -> !reading.equals("."));
			boolean reason = answer.heldOff() || answer.chanceNow() >= Prices.USUAL.bar();
			assertTrue(!slides || reason || !answer.nothing(), () -> Arrays.toString(felt) + " " + answer);
		}
	}

	@Test
	void tellsAKeyThatIsHeldOff() {
		SeatAnswer answer = solve(pad(0), FILMS, round(0, "3", "3", "3", "3", "3", "3", "3", "3"));
		assertTrue(answer.heldOff());
		assertTrue(answer.place().isEmpty() && answer.fullShims().signum() == 0);
	}

	@Test
	void saysThatThereIsNoFilm() {
		SeatAnswer answer = Seating.solve(new SeatProblem(pad(0), List.of(round(0, ".", "1", ".", "1")), FilmInPlace.NONE,
				List.of(new FilmSupply(Length.thou("1"), 0)), List.of(), SEAT, Prices.USUAL));
		assertEquals(Optional.of(WhyNothing.NO_FILM), answer.whyNothing());
	}

	@Test
	void putsNoFilmWhereNothingWasRead() {
		List<FeltReading> felt = List.of(FeltReading.drag(ClockHour.ofHour(12), LEAVES),
				FeltReading.slide(ClockHour.ofHour(1), Length.thou("1"), LEAVES),
				FeltReading.slide(ClockHour.ofHour(2), Length.thou("1"), LEAVES),
				FeltReading.drag(ClockHour.ofHour(3), LEAVES));
		SeatAnswer answer = solve(pad(0), FILMS, new FeltRound(felt, FilmInPlace.NONE));
		assertEquals(List.of(Arc.between(ClockHour.ofHour(3), ClockHour.ofHour(12))), answer.unread());
		for (PartialShim piece : answer.place()) {
			for (int station = 12; station <= 18; station++) {
				assertEquals(0, piece.arc().quarterHoursCoveredAt(station), () -> answer.toString());
			}
		}
	}

	@Test
	void turnsWithHingeAndReadings() {
		SeatAnswer answer = solve(pad(0), FILMS, round(0, ".", "0.5", "1", "0.5", ".", ".", "0.5", "."));
		SeatAnswer turned = solve(pad(6), FILMS, round(6, ".", "0.5", "1", "0.5", ".", ".", "0.5", "."));
		assertEquals(answer.chance(), turned.chance());
		assertEquals(answer.place().stream().map(piece -> piece.arc().from().plusHalfHours(6)).sorted().toList(),
				turned.place().stream().map(piece -> piece.arc().from()).sorted().toList());
	}

	@Test
	void isLevelEnoughWhereFineLeavesSaySo() {
		FeelerSet fine = new FeelerSet(Stream.of("0.25", "0.5").map(Length::thou).toList());
		List<FeltReading> felt = new ArrayList<>();
		for (int station = 0; station < 24; station += 2) {
			felt.add(FeltReading.drag(new ClockHour(station), fine));
		}
		SeatAnswer answer = solve(pad(0), FILMS, new FeltRound(felt, FilmInPlace.NONE));
		assertEquals(Optional.of(WhyNothing.LEVEL_ENOUGH), answer.whyNothing());
		assertTrue(answer.chance() >= 0.9);
	}

	/** With a hand that hardly scatters and every half hour read finely, what is foreseen is what comes. */
	@Test
	void comesToTheExactAnswerWhereAllIsKnown() {
		long[] rim = new long[24];
		for (int station = 0; station < 24; station++) {
			double angle = 2 * Math.PI * station / 24;
			rim[station] = Math.round(12_000 * Math.cos(2 * angle) + 6_000 * Math.sin(angle));
		}
		Hinge hinge = new Hinge(new ClockHour(0), 7 / 12.0);
		RimProfile gap = ClosedGap.of(RimProfile.ofNanometres(rim), hinge);
		List<FeltReading> felt = new ArrayList<>();
		for (int station = 0; station < 24; station++) {
			Length at = gap.at(new ClockHour(station));
			Length above = new Length(Math.max(0, at.nanometres() - 400));
			felt.add(new FeltReading(new ClockHour(station), above, Optional.of(new Length(at.nanometres() + 400)), true));
		}
		PadModel known = new PadModel(RimPrior.of(RimCondition.DRAWN), hinge, 0, RIGID, 0, Length.ofNanometres(400));
		SeatAnswer answer = solve(known, FILMS, new FeltRound(felt, FilmInPlace.NONE));
		long[] after = rim.clone();
		for (PartialShim piece : answer.place()) {
			RimProfile lift = Lift.of(piece, RIGID);
			Arrays.setAll(after, station -> after[station] - lift.nanometresAt(station));
		}
		Arrays.setAll(after, station -> after[station] - answer.fullShims().nanometres());
		RimProfile left = ClosedGap.of(RimProfile.ofNanometres(after), hinge);
		assertTrue(answer.chance() > 0.9, () -> answer.toString());
		assertTrue(left.stream().max().getAsLong() <= SEAT.nanometres(), () -> left.toString());
	}

	@Test
	void isTheSameEveryTime() {
		FeltRound felt = round(0, ".", "0.5", ".", "1.5", ".");
		assertEquals(solve(pad(0), FILMS, felt), solve(pad(0), FILMS, felt));
	}

	@Test
	void namesAnHourWorthFeeling() {
		SeatAnswer answer = solve(pad(0), FILMS, round(0, ".", "0.5", ".", "0.5"));
		assertTrue(answer.next().isPresent(), () -> answer.toString());
		assertTrue(answer.next().get().hour().station() % 6 != 0, () -> answer.toString());
	}

	@Test
	void namesTheHourLikeliestToBeOpenBeforeAPadIsCalledLevel() {
		SeatAnswer answer = solve(pad(0), FILMS, round(0, ".", ".", ".", "."));
		NextHour next = answer.next().orElseThrow();
		assertTrue(answer.chanceNow() < Prices.USUAL.bar(), () -> answer.toString());
		assertTrue(next.hour().station() % 6 != 0, () -> answer.toString());
		assertTrue(next.open() > 0.02 && next.open() <= 1 - answer.chanceNow() + 0.1, () -> answer.toString());
	}
}
