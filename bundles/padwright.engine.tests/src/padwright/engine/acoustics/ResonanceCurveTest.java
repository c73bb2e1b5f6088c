package padwright.engine.acoustics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.api.Test;

class ResonanceCurveTest {

	private static final Instrument FLUTE = new Instrument(Tubes.sevenHoles(), Tubes.TWENTY);

	/** The flute of another test here, computed apart from this project: all its resonances in the range, and no others. */
	@ParameterizedTest
	@CsvFileSource(resources = "seven-hole-flute.csv", numLinesToSkip = 1)
	void thePeaksAreTheResonances(String fingering, double first, double second, double third, double fourth) {
		List<Resonance> peaks = ResonanceCurve.of(FLUTE, Tubes.fingering(fingering), 200, fourth + 50).resonances();
		assertEquals(4, peaks.size());
		double[] expected = { first, second, third, fourth };
		for (int index = 0; index < expected.length; index++) {
			assertEquals(expected[index], peaks.get(index).hertz(), 0.012);
		}
	}

	/** Without an embouchure hole nothing is outside of what {@link Instrument#impedance} tells. */
	@Test
	void itIsTheImpedanceUpsideDown() {
		Instrument tube = new Instrument(Tubes.fourHoles(), Tubes.TWENTY);
		Fingering fingering = Tubes.fingering("xxox");
		ResonanceCurve curve = ResonanceCurve.of(tube, fingering, 200, 4000);
		double above = 0;
		for (ResonanceCurve.Point point : curve.points()) {
			assertTrue(point.hertz() >= above);
			above = point.hertz();
			assertEquals(-20 * Math.log10(tube.impedance(fingering, point.hertz()).over(tube.characteristicImpedance())
					.magnitude()), point.decibels(), 1e-4);
		}
		assertEquals(curve.resonances().get(1), curve.played(curve.resonances().get(1).hertz() + 3).orElseThrow());
	}

	@Test
	void aRangeGoesUp() {
		assertThrows(IllegalArgumentException.class, () -> ResonanceCurve.of(FLUTE, Tubes.fingering(""), 400, 400));
		assertThrows(IllegalArgumentException.class, () -> ResonanceCurve.of(FLUTE, Tubes.fingering(""), 0, 400));
	}
}
