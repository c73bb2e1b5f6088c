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

	@ParameterizedTest
	@ValueSource(strings = { "UNM 1", "UNM 1.0", "UNM 1.00", "unm1.0", " unm  1.0 " })
	void spellingOfOneDesignationDoesNotMatter(String designation) {
		assertEquals("UNM 1.0", ScrewThread.of(designation).designation());
	}

	@ParameterizedTest
	@ValueSource(strings = { "UNM 1.3", "17 BA", "BA", "UNM 10", "1.0", "", "1 0 B" })
	void otherDesignationsAreRefused(String designation) {
		assertThrows(IllegalArgumentException.class, () -> ScrewThread.of(designation));
	}

	@Test
	void tenBaIsNotOneBa() {
		assertEquals(Length.millimetres("0.35"), ScrewThread.of("10ba").pitch());
		assertEquals(Length.millimetres("0.9"), ScrewThread.of("1ba").pitch());
	}
}
