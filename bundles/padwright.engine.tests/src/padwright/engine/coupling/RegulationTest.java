package padwright.engine.coupling;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.math.BigDecimal;
import java.util.List;
import java.util.SplittableRandom;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import padwright.engine.coupling.Regulation.Side;
import padwright.engine.film.FilmSupply;
import padwright.engine.length.Length;

class RegulationTest {

	private static final Length QUARTER_MILLIMETRE = Length.millimetres("0.25");

	/** Turns are travel over pitch, 360 degrees and 12 hours a turn; half a thou at 0.25 mm is 12.7/250 of 360, 18.3. */
	@ParameterizedTest
	@CsvSource({ "5,2,DRIVEN,0.254,91,3", "5,0.5,DRIVEN,1.016,366,12.2", "2.5,0.5,DRIVER,-0.254,91,3",
			"0.5,1,DRIVEN,0.0508,18,0.6", "0,1,DRIVER,0,0,0", "0.01,1,DRIVER,-0.001,0,0", "16,1,DRIVER,-1.6256,585,19.5" })
	void turnsAreTravelOverPitch(String thou, String ratio, Side side, BigDecimal turns, long degrees, BigDecimal hours) {
		Coupling pair = new Coupling("F", "Fs", Adjuster.screw(ScrewThread.of("UNM 1.0")), new BigDecimal(ratio));
		ScrewTurn turn = (ScrewTurn) new Regulation(pair, side, Length.thou(thou)).adjustment();
		assertEquals(0, turns.compareTo(turn.turns()), () -> "turns " + turn.turns());
		assertEquals(degrees, turn.degrees());
		assertEquals(0, hours.compareTo(turn.clockHours()), () -> "hours " + turn.clockHours());
	}

	@Test
	void turnsTimesPitchGiveTheTravelBack() {
		SplittableRandom random = new SplittableRandom(31);
		for (int i = 0; i < 2_000; i++) {
			ScrewThread thread = ScrewThread.ba().get(random.nextInt(17));
			Length travel = new Length(random.nextLong(-2_000_000, 2_000_001));
			ScrewTurn turn = new Screw(thread.pitch()).adjustmentFor(travel);
			double pitch = thread.pitch().nanometres();
			assertEquals(travel.nanometres(), turn.turns().doubleValue() * pitch, 0.00005 * pitch + 1e-6);
			assertEquals(Math.abs(travel.nanometres()), turn.degrees() * pitch / 360, pitch / 720);
			assertEquals(Math.abs(travel.nanometres()), turn.clockHours().doubleValue() * pitch / 12, pitch / 240);
		}
	}

	/** While the driver closes by its light, the driven key closes by that times the ratio: one fault, two ends. */
	@Test
	void lightAtTheOtherSideIsTheOppositeTravel() {
		SplittableRandom random = new SplittableRandom(32);
		for (int i = 0; i < 1_000; i++) {
			long ratio = random.nextLong(1, 300);
			Coupling pair = new Coupling("E", "Fs", new Screw(QUARTER_MILLIMETRE), BigDecimal.valueOf(ratio, 2));
			Length atDriver = new Length(random.nextLong(0, 5_000) * 100);
			Length atDriven = new Length(atDriver.nanometres() / 100 * ratio);
			assertEquals(atDriver, new Regulation(pair, Side.DRIVEN, atDriven).travel());
			assertEquals(atDriver.negated(), new Regulation(pair, Side.DRIVER, atDriver).travel());
		}
	}

	@Test
	void aCorkAdjusterIsToldWhichFilm() {
		List<FilmSupply> films = List.of(FilmSupply.unlimited(Length.thou("0.5")),
				FilmSupply.unlimited(Length.thou("2")));
		Coupling pair = new Coupling("A", "As", Adjuster.cork(films));
		FilmChange added = (FilmChange) new Regulation(pair, Side.DRIVEN, Length.thou("2.5")).adjustment();
		assertEquals(List.of(Length.thou("2"), Length.thou("0.5")), added.pieces());
		assertEquals(Length.ZERO, added.remainder());
		FilmChange taken = (FilmChange) new Regulation(pair, Side.DRIVER, Length.thou("2.2")).adjustment();
		assertEquals(List.of(Length.thou("2")), taken.pieces());
		assertEquals(Length.thou("-0.2"), taken.remainder());
		assertEquals(List.of(),
				((FilmChange) new Regulation(pair, Side.DRIVEN, Length.thou("0.2")).adjustment()).pieces());
	}

	@Test
	void badInputIsRefused() {
		Screw screw = new Screw(QUARTER_MILLIMETRE);
		assertThrows(IllegalArgumentException.class, () -> new Screw(Length.ZERO));
		assertThrows(IllegalArgumentException.class, () -> new ScrewTurn(Length.ZERO, Length.thou("-1")));
		assertThrows(IllegalArgumentException.class, () -> new Coupling("F", "F", screw));
		assertThrows(IllegalArgumentException.class, () -> new Coupling("F", " ", screw));
		assertThrows(IllegalArgumentException.class, () -> new Coupling("F", "Fs", screw, BigDecimal.ZERO));
		Coupling pair = new Coupling("F", "Fs", screw);
		assertThrows(IllegalArgumentException.class, () -> new Regulation(pair, Side.DRIVER, Length.thou("-1")));
		FilmSupply film = FilmSupply.unlimited(Length.thou("1"));
		assertThrows(IllegalArgumentException.class, () -> Adjuster.felt(List.of(film, film)));
	}
}
