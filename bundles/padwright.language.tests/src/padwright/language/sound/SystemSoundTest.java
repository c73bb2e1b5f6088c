package padwright.language.sound;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import padwright.engine.acoustics.AirModel;
import padwright.engine.acoustics.BorePoint;
import padwright.engine.acoustics.Cover;
import padwright.engine.acoustics.Cup;
import padwright.engine.acoustics.Hole;
import padwright.engine.acoustics.Layout;
import padwright.engine.acoustics.Mouth;
import padwright.engine.acoustics.SoundModel;
import padwright.language.TestShop;
import padwright.workup.sound.FingeredTone;
import padwright.workup.sound.MissingSize;
import padwright.workup.sound.SystemSound;

class SystemSoundTest {

	private static final String FLUTE = """
			pitch 442 Hz at 24 °C
			sounds -5 semitones
			joint head long 180 bore 17 at 0, 18 at 50, 19 at 150 embouchure 12.1 by 10 chimney 5 at 50 cork 17
			joint body long 300 bore 19
			joint foot long 100 bore 18
			touch L1
			touch L2
			touch R1
			touch Side
			hole Vent 4 rim 0.8 chimney 3 on head at 170
			hole H1 7 chimney 4 undercut 0.5 by L1 at 60
			key Register closed by Side over Vent cup 7
			key A by L2 hole 13 rim 0.5 chimney 2.5 cup 16.5 deep 2.9 perforated 6 rise 2.8 at 100
			key G turns with A hole 13 chimney 2.5 cup 16.5 at 130
			key D by R1 hole 14 chimney 2.5 cup 17 rise 2.5 on foot at 20
			note D4 : L1 L2 R1
			note E4 +50 cents "low" : half L1 half L2 R1
			note F4 : Side
			note A4 trill : Side
			""";

	@Test
	void sizesComeFromTheMainJointOn() {
		Layout layout = of(FLUTE).instrument().orElseThrow().layout();
		assertEquals(List.of(point(-147, 17.66), point(-130, 18), point(-30, 19), point(0, 19), point(300, 19),
				point(300, 18), point(400, 18)), layout.bore());
		assertEquals(Optional.of(new Mouth(-0.13, 0.011, 0.005, 0)), layout.mouth());
		assertEquals(List.of(new Hole("Vent", -0.01, 0.004, 0.003, 0.0008, Optional.of(new Cup(0.007, 0.003, 0, 0))),
				new Hole("H1", 0.06, 0.007, 0.004, 0.001, Optional.empty()),
				new Hole("A", 0.1, 0.013, 0.0025, 0.0005, Optional.of(new Cup(0.0165, 0.0028, 0.006, 0.0029))),
				new Hole("G", 0.13, 0.013, 0.0025, 0.001, Optional.of(new Cup(0.0165, 0.0028, 0, 0))),
				new Hole("D", 0.32, 0.014, 0.0025, 0.001, Optional.of(new Cup(0.017, 0.0025, 0, 0)))), layout.holes());
	}

	private static BorePoint point(double place, double diameter) {
		return new BorePoint(place / 1000, diameter / 1000);
	}

	@Test
	void theAirIsAsWarmAsTheSystemSays() {
		assertEquals(SoundModel.in(AirModel.CHAIGNE_KERGOMARD.at(24)), of(FLUTE).model());
		assertEquals(SoundModel.in(AirModel.CHAIGNE_KERGOMARD.at(20)), of("joint body").model());
	}

	@Test
	void fingersCoverHolesAndOpenings() {
		List<FingeredTone> tones = of(FLUTE).tones();
		assertEquals(Map.of("Vent", Cover.CLOSED, "H1", Cover.CLOSED, "A", Cover.CLOSED, "G", Cover.CLOSED, "D",
				Cover.CLOSED), tones.get(0).note().fingering().covers());
		assertEquals(Map.of("Vent", Cover.CLOSED, "H1", new Cover.Partly(0.5), "A", new Cover.Partly(0.5), "G",
				Cover.CLOSED, "D", Cover.CLOSED), tones.get(1).note().fingering().covers());
		assertEquals(Map.of("Vent", Cover.OPEN, "H1", Cover.OPEN, "A", Cover.OPEN, "G", Cover.OPEN, "D", Cover.OPEN),
				tones.get(2).note().fingering().covers());
	}

	/** A pad that another key brings down, with no finger on its opening. */
	@Test
	void anOpeningWithoutAFingerSounds() {
		SystemSound flute = of("""
				joint body long 300 bore 19
				touch R2
				key F hole 14 chimney 2.5 cup 17 perforated 6 at 100
				key E by R2 closes F hole 14 chimney 2.5 cup 17 at 130
				note A4 : R2
				""");
		assertEquals(Map.of("F", new Cover.Partly(0), "E", Cover.CLOSED),
				flute.tones().get(0).note().fingering().covers());
	}

	/** 442 Hz · 2^(n/12) for a fourth below A4 and so on, by hand. */
	@Test
	void pitchesFollowTheStandardTheTranspositionAndTheCents() {
		List<FingeredTone> tones = of(FLUTE).tones();
		assertEquals(442 * Math.pow(2, -12 / 12.0), tones.get(0).note().hertz(), 1e-9);
		assertEquals(442 * Math.pow(2, -9.5 / 12.0), tones.get(1).note().hertz(), 1e-9);
		assertEquals(442 * Math.pow(2, -5 / 12.0), tones.get(3).note().hertz(), 1e-9);
		assertEquals(List.of("D4", "E4 +50", "F4", "A4"), tones.stream().map(FingeredTone::name).toList());
	}

	@Test
	void whatIsAssumedOrLeftAsideIsKnown() {
		SystemSound flute = of(FLUTE);
		assertEquals(List.of("Register"), flute.assumedRises());
		assertEquals(List.of("H1"), flute.undercut());
		assertEquals(Optional.of("Vent"), flute.holeUnder("Register"));
		assertEquals(Optional.empty(), flute.holeUnder("Lever"));
		assertTrue(flute.hasMouth());
	}

	@Test
	void fingeringsThatCannotSoundAreLeftOut() {
		SystemSound flute = of("""
				joint body long 300 bore 19
				touch L4
				touch R1
				key Gs closed by L4 hole 13 chimney 2 cup 16 at 100
				key G by R1 closes Gs hole 13 chimney 2 cup 16 at 120
				note F4 : L4 R1
				note X : R1
				note G4 : R1
				""");
		assertEquals(List.of("F4: cannot be fingered: Gs: L4 presses Gs; but R1 presses G, G closes Gs", "X: X is no pitch"),
				flute.leftOut().stream().map(note -> note.name() + ": " + note.why().words()).toList());
		assertEquals(List.of("G4"), flute.tones().stream().map(FingeredTone::name).toList());
	}

	/** One thing taken away from the flute, and what is told. */
	@ParameterizedTest
	@CsvSource(delimiter = '|', quoteCharacter = '`', value = {
			" long 300 | Joint body does not say how long it is | joint body long 347 mm",
			" bore 18 | Joint foot does not say its bore | Write bore and the inside diameter",
			" chimney 5 | The embouchure hole of joint head has no chimney | Write chimney",
			" cork 17 | Joint head does not say where its cork is | at the end of joint head",
			" chimney 3 | Hole Vent has no chimney | behind the diameter of hole Vent",
			" cup 7 | Key Register has no cup diameter | Write cup",
			" at 60 | Hole H1 has no place | Write at", })
	void aMissingSizeIsNamedWithItsCure(String without, String what, String cure) {
		SystemSound flute = of(FLUTE.replaceFirst(" " + without.strip() + "(?= |\\n)", ""));
		List<String> told = flute.missing().stream().map(size -> size.advice().inOneLine()).toList();
		assertTrue(told.stream().anyMatch(line -> line.startsWith(what) && line.contains(cure)), told.toString());
		assertEquals(Optional.empty(), flute.instrument());
	}

	@Test
	void whatMakesNoInstrumentIsTold() {
		for (String wrong : List.of("", "joint body long 300 bore 19\nhole H 25 chimney 3 at 100",
				"joint body long 300 bore 19\nhole H 5 chimney 3 at 310",
				"joint body long 300 bore 19 embouchure 12 by 10 chimney 5 at 10 cork 20",
				"joint body long 300 bore 19 at 200, 18 at 100")) {
			SystemSound flute = of(wrong);
			assertEquals(1, flute.missing().size(), wrong);
			assertEquals(Optional.empty(), flute.instrument());
		}
	}

	@Test
	void halfTypedSystemsAreBorne() {
		for (int length = 0; length < FLUTE.length(); length++) {
			List<MissingSize> missing = of(FLUTE.substring(0, length)).missing();
			assertTrue(missing.stream().noneMatch(size -> size.advice().what().words().isBlank()));
		}
	}

	private static SystemSound of(String text) {
		return SystemSound.of(new TestShop().with("a.keys", "unit mm\nsystem Flute {\n" + text + "\n}")
				.document("a.keys").getSystems().get(0));
	}
}
