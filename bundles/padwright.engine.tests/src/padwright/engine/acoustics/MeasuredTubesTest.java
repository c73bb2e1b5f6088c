package padwright.engine.acoustics;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Comparator;
import java.util.List;

import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

import padwright.engine.pitch.EqualTemperament;

/**
 * Measured: input impedances published with A. Ernoult, J. Chabassier, S. Rodriguez and A. Humeau, Full waveform
 * inversion for bore reconstruction of woodwind-like instruments, Acta Acustica 5 (2021) 47, as data files of the
 * open-source library openwind; maxima and minima read off them by parabolas, those of the tube with holes as means of
 * three sessions. Beside them what another implementation of the same model computed.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class MeasuredTubesTest {

	/** Deep minima are off by more than maxima: they lie in the noise of the measurement. */
	private static final double MAXIMA_CENTS = 9;
	private static final double MINIMA_CENTS = 14;

	private Instrument cylinder;
	private Instrument fourHoles;
	private Instrument otherModel;

	@BeforeAll
	void build() {
		cylinder = new Instrument(Tubes.cylinder(436, 3.9), Tubes.TWENTY);
		fourHoles = new Instrument(Tubes.fourHoles(), Tubes.TWENTY);
		SoundModel usual = Tubes.TWENTY;
		otherModel = new Instrument(Tubes.fourHoles(), new SoundModel(usual.air(), HoleModel.LEFEBVRE_SCAVONE, true,
				Radiation.FLANGED, usual.boreEnd(), usual.mouthEnd()));
	}

	@ParameterizedTest
	@CsvFileSource(resources = "measured-cylinder.csv", numLinesToSkip = 1)
	void cylinder(String kind, double measured, double model) {
		check(cylinder, Tubes.fingering(""), kind, measured, model);
	}

	/** How high the maxima are tells of the losses: the first is off by 0.73 dB, the others by less than 0.45. */
	@ParameterizedTest
	@CsvFileSource(resources = "measured-cylinder.csv", numLinesToSkip = 1)
	void heightsOfTheCylinder(String kind, double measured, double model, Double decibels) {
		if (decibels != null) {
			double magnitude = cylinder.impedance(Tubes.fingering(""), model).magnitude();
			assertEquals(decibels, 20 * Math.log10(magnitude / cylinder.characteristicImpedance()), 0.75);
		}
	}

	@ParameterizedTest
	@CsvFileSource(resources = "measured-four-hole-tube.csv", numLinesToSkip = 1)
	void tubeWithFourHoles(String fingering, String kind, double measured, double dubos, double lefebvre) {
		check(fourHoles, Tubes.fingering(fingering), kind, measured, dubos);
		check(otherModel, Tubes.fingering(fingering), kind, measured, lefebvre);
	}

	private static void check(Instrument instrument, Fingering fingering, String kind, double measured, double model) {
		boolean maxima = kind.equals("max");
		List<Double> extrema = Tubes.extrema(instrument, fingering, model - 10, model + 10, maxima);
		double computed = extrema.stream().min(Comparator.comparingDouble(hertz -> Math.abs(hertz - model)))
				.orElseThrow();
		assertEquals(model, computed, 0.3);
		assertEquals(0, 100 * (EqualTemperament.midi(computed) - EqualTemperament.midi(measured)),
				maxima ? MAXIMA_CENTS : MINIMA_CENTS);
	}
}
