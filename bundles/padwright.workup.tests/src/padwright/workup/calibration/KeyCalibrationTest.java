package padwright.workup.calibration;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;

import padwright.engine.calibration.Calibration;
import padwright.engine.calibration.CalibrationResult.Calibrated;
import padwright.engine.calibration.CalibrationRound;
import padwright.engine.clock.Arc;
import padwright.engine.clock.ClockHour;
import padwright.engine.film.PartialShim;
import padwright.engine.length.Length;
import padwright.engine.rim.FeelerSet;
import padwright.engine.rim.RimReading;
import padwright.model.plan.KeyService;
import padwright.model.plan.Round;
import padwright.workup.DemoPlan;
import padwright.workup.words.Phrase;
import padwright.workup.words.Spoken;

class KeyCalibrationTest {

	private static final List<ClockHour> EVERY_HOUR = IntStream.range(0, 12).mapToObj(hour -> new ClockHour(2 * hour))
			.toList();
	/** Modelled with a stiffness of 0.003 and the piece of 3 thou. */
	private static final String BEFORE = "2 2 3 3 3 2 2 1.5 0.5 0.5 0.5 1";
	private static final String AFTER = "2 2 1.5 1 2 3 2 1 0.5 0.5 0.5 1";

	private final DemoPlan demo = new DemoPlan();
	private final KeyService row = demo.row(demo.key("F"));

	@Test
	void roundsAroundPiecesGoToTheEngine() {
		demo.shim(felt(BEFORE), "3", "2", "3.5");
		demo.shim(felt(AFTER), "1", "7", "8.5");
		felt(AFTER);
		List<CalibrationRound> rounds = List.of(
				new CalibrationRound(readings(BEFORE), List.of(piece("3", 4)), readings(AFTER)),
				new CalibrationRound(readings(AFTER), List.of(piece("1", 14)), readings(AFTER)));
		assertEquals(Optional.of(new KeyCalibration(2, ToldStiffness.of(Calibration.of(rounds)))), calibration());
	}

	@Test
	void aShortThickPieceTellsASoftPad() {
		demo.shim(felt(BEFORE), "3", "2", "3.5");
		felt(AFTER);
		Calibrated told = calibration().orElseThrow().stiffness().told().orElseThrow();
		assertTrue(told.atMost().lambda() < 0.1, told.toString());
	}

	@Test
	void withoutPiecesBetweenThereIsNothingToTell() {
		assertEquals(Optional.empty(), calibration());
		felt(BEFORE);
		demo.shim(felt(AFTER), "3", "2", "3.5");
		assertEquals(Optional.empty(), calibration());
	}

	@Test
	void aRefusalKeepsItsReason() {
		demo.shim(demo.felt(row, ". 1 . ."), "0.5", "1", "7");
		demo.felt(row, ". . . .");
		KeyCalibration refused = calibration().orElseThrow();
		assertEquals(1, refused.rounds());
		assertEquals("stiffness.tooWide", refused.stiffness().why().key());
		assertTrue(refused.stiffness().why().words().startsWith("any stiffness from 0.0"), refused::toString);
		assertTrue(Spoken.in(Locale.GERMAN, refused.stiffness().why()::words).startsWith("jede Steifigkeit von 0,0"),
				refused::toString);
	}

	@Test
	void roundsThatCannotBeUsedSayWhy() {
		demo.shim(felt(BEFORE), "3", "2", "3.5");
		demo.felt(row, ". . .");
		assertEquals(Optional.of(new KeyCalibration(0, ToldStiffness.not(Phrase.of("readings.count", 3, 4)))), calibration());
	}

	@Test
	void roundsAtOtherHoursSayWhy() {
		demo.shim(demo.felt(row, ". 1 . ."), "0.5", "1", "7");
		Round other = demo.felt(row, ". .");
		other.getHours().addAll(List.of(ClockHour.ofHour(1), ClockHour.ofHour(7)));
		KeyCalibration refused = calibration().orElseThrow();
		assertEquals(0, refused.rounds());
		assertEquals(Phrase.of("stiffness.noHourTwice"), refused.stiffness().why());
	}

	private Optional<KeyCalibration> calibration() {
		return KeyCalibration.of(demo.service().jobs().get(0));
	}

	private Round felt(String readings) {
		Round round = demo.felt(row, readings);
		round.getHours().addAll(EVERY_HOUR);
		return round;
	}

	private static PartialShim piece(String thou, int station) {
		return new PartialShim(new Arc(new ClockHour(station), 3), Length.thou(thou));
	}

	private static List<RimReading> readings(String written) {
		FeelerSet feelers = new FeelerSet(Stream.of("0.5", "1", "1.5", "2", "3", "4").map(Length::thou).toList());
		List<String> leaves = Arrays.asList(written.split(" "));
		List<RimReading> readings = new ArrayList<>();
		for (int hour = 0; hour < leaves.size(); hour++) {
			readings.add(feelers.free(EVERY_HOUR.get(hour), Length.thou(leaves.get(hour))));
		}
		return readings;
	}
}
