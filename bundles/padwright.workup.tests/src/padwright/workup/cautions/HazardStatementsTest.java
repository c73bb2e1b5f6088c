package padwright.workup.cautions;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class HazardStatementsTest {

	/** Wording of Regulation (EC) No 1272/2008 (CLP), annexes III and IV. */
	@ParameterizedTest
	@CsvSource(delimiter = '|', textBlock = """
			H225   | Highly flammable liquid and vapour.
			H226   | Flammable liquid and vapour.
			H304   | May be fatal if swallowed and enters airways.
			H315   | Causes skin irritation.
			H317   | May cause an allergic skin reaction.
			H319   | Causes serious eye irritation.
			H335   | May cause respiratory irritation.
			H336   | May cause drowsiness or dizziness.
			EUH066 | Repeated exposure may cause skin dryness or cracking.
			EUH202 | Cyanoacrylate. Danger. Bonds skin and eyes in seconds. Keep out of the reach of children.
			P210   | Keep away from heat, hot surfaces, sparks, open flames and other ignition sources. No smoking.
			""")
	void statementsHaveTheirExactWording(String code, String wording) {
		assertEquals(Optional.of(wording), HazardStatements.wording(code));
		assertTrue(HazardStatements.codes().contains(code));
	}

	/** Forms of Regulation (EC) No 1272/2008, annexes III and IV. */
	@ParameterizedTest
	@ValueSource(strings = { "H318", "H334", "H411", "H360FD", "H350i", "H300+H310", "EUH209A", "EUH380", "P305+P351+P338" })
	void codesWithoutCheckedWordingPointToTheSheet(String code) {
		assertTrue(HazardStatements.isWellFormed(code));
		assertEquals(code + " (wording: see the safety data sheet)", HazardStatements.printed(code));
	}

	@ParameterizedTest
	@ValueSource(strings = { "H31", "H3155", "h318", "H999", "H05", "EUH66", "P900", "H300+P310", "X1" })
	void otherFormsAreNoCodes(String code) {
		assertFalse(HazardStatements.isWellFormed(code));
	}

	@Test
	void otherCodesHaveNone() {
		assertEquals(Optional.empty(), HazardStatements.wording("H999"));
		assertEquals(Optional.empty(), HazardStatements.wording("h315"));
		assertFalse(HazardStatements.codes().contains("H999"));
	}
}
