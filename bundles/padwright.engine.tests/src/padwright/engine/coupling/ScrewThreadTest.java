package padwright.engine.coupling;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

import padwright.engine.length.Length;
import padwright.engine.length.LengthUnit;

class ScrewThreadTest {

	/** Machinery's Handbook, 31st edition, unified miniature screw threads. */
	@ParameterizedTest
	@CsvSource({ "0.30,0.080", "0.35,0.090", "0.40,0.100", "0.45,0.100", "0.50,0.125", "0.55,0.125", "0.60,0.150",
			"0.70,0.175", "0.80,0.200", "0.90,0.225", "1.00,0.250", "1.10,0.250", "1.20,0.250", "1.40,0.300" })
	void unifiedMiniatureThreadsHaveTheirPublishedPitch(String size, String pitch) {
		ScrewThread thread = ScrewThread.of("UNM " + size);
		assertEquals(Length.millimetres(pitch), thread.pitch());
		assertEquals(Length.millimetres(size), thread.diameter());
	}

	/** British Association series 0 to 16: pitch 0.9ᵏ mm, as published to 0.01 mm. */
	@Test
	void britishAssociationThreadsHaveTheirPublishedPitch() {
		List<String> published = List.of("1", "0.9", "0.81", "0.73", "0.66", "0.59", "0.53", "0.48", "0.43", "0.39",
				"0.35", "0.31", "0.28", "0.25", "0.23", "0.21", "0.19");
		assertEquals(published, ScrewThread.ba().stream()
				.map(thread -> thread.pitch().in(LengthUnit.MILLIMETRE, 6).toPlainString()).toList());
	}

	/** British Association series: 13 BA is 1.2 mm, 6·p^1.2 of the unrounded pitch. */
	@Test
	void thirteenBaIsOnePointTwoMillimetres() {
		assertEquals(Length.millimetres("1.2"), ScrewThread.of("13 BA").diameter());
		assertEquals(Length.millimetres("6"), ScrewThread.of("0 BA").diameter());
	}

	/** ISO 261 and 262: coarse pitch, and the fine one that is named behind the size. */
	@ParameterizedTest
	@CsvSource({ "M1,1,0.25", "M1.2,1.2,0.25", "M1.4,1.4,0.3", "M1.6,1.6,0.35", "M2,2,0.4", "M2.5,2.5,0.45", "M3,3,0.5",
			"M4,4,0.7", "M5,5,0.8", "M6,6,1", "M1x0.2,1,0.2", "M 2 x 0.25,2,0.25", "m2.5\u00D70.35,2.5,0.35",
			"M3x0.35,3,0.35", "M2.6,2.6,0.45" })
	void metricThreadsHaveTheirPublishedPitch(String name, String diameter, String pitch) {
		assertEquals(Length.millimetres(pitch), ScrewThread.of(name).pitch());
		assertEquals(Length.millimetres(diameter), ScrewThread.of(name).diameter());
	}

	/** Numbered inch threads: published diameters and pitches to a micrometre (0-80 is 1.524 by 0.3175 mm). */
	@ParameterizedTest
	@CsvSource({ "0-80,1.524,0.3175", "#1-72,1.854,0.353", "2-64 UNF,2.184,0.397", "4-40 unc,2.845,0.635",
			"6-32,3.505,0.794", "8-36,4.166,0.706", "10-32,4.826,0.794", "12-24,5.486,1.058" })
	void inchThreadsHaveTheirPublishedSize(String name, double diameter, double pitch) {
		assertEquals(pitch, ScrewThread.of(name).pitch().in(LengthUnit.MILLIMETRE, 6).doubleValue(), 0.0006);
		assertEquals(diameter, ScrewThread.of(name).diameter().in(LengthUnit.MILLIMETRE, 6).doubleValue(), 0.0006);
	}

	/** ISO 1501, series S: S 0.9 has a pitch of 0.225 mm. */
	@Test
	void threadsOfWatchesAreKnown() {
		assertEquals(Length.millimetres("0.225"), ScrewThread.of("S0.9").pitch());
		assertEquals(14, ScrewThread.watch().size());
	}

	@ParameterizedTest
	@ValueSource(strings = { "UNM 1", "UNM 1.0", "UNM 1.00", "unm1.0", " unm  1.0 " })
	void spellingOfOneDesignationDoesNotMatter(String designation) {
		assertEquals("UNM 1.0", ScrewThread.of(designation).designation());
	}

	@ParameterizedTest
	@ValueSource(strings = { "UNM 1.3", "17 BA", "BA", "UNM 10", "1.0", "M 1.3", "M2x0.4x1", "M 20", "0-81", "S 2", "", "1 0 B" })
	void otherDesignationsAreRefused(String designation) {
		assertThrows(IllegalArgumentException.class, () -> ScrewThread.of(designation));
	}

	@Test
	void tenBaIsNotOneBa() {
		assertEquals(Length.millimetres("0.35"), ScrewThread.of("10ba").pitch());
		assertEquals(Length.millimetres("0.9"), ScrewThread.of("1ba").pitch());
	}
}
