package padwright.engine.acoustics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

class AirModelTest {

	/**
	 * D. H. Keefe, J. Acoust. Soc. Am. 75 (1984) 58–62: computed from his formulas, exactly his constants at 26.85 °C.
	 */
	@ParameterizedTest
	@CsvSource({ "20,343.28164767,1.20390691,1.81438725e-5", "25,346.16366,1.18419384,1.83746e-5",
			"26.85,347.23,1.1769,1.846e-5" })
	void keefe(double celsius, double speed, double density, double viscosity) {
		AirConstants air = AirModel.KEEFE.at(celsius);
		assertEquals(speed, air.speed(), 5e-6);
		assertEquals(density, air.density(), 5e-9);
		assertEquals(viscosity, air.viscosity(), 5e-11);
	}

	/** As above: ratio of heats and Prandtl number at 20 °C. */
	@Test
	void heatAfterKeefe() {
		AirConstants air = AirModel.KEEFE.at(20);
		assertEquals(1.40189203, air.heatRatio(), 5e-9);
		assertEquals(0.709220, air.viscosity() * air.heatCapacity() / air.conductivity(), 5e-7);
	}

	/** Values that the tests of the library openwind give for Chaigne and Kergomard's formulas at 20 °C. */
	@Test
	void chaigneAndKergomard() {
		AirConstants air = AirModel.CHAIGNE_KERGOMARD.at(20);
		assertEquals(343.3700171691432, air.speed(), 1e-10);
		assertEquals(1.2046925976462561, air.density(), 1e-13);
		assertEquals(1.807064e-5, air.viscosity(), 1e-17);
		assertEquals(0.02573503088, air.conductivity(), 1e-14);
		assertEquals(1004.16, air.heatCapacity(), 1e-10);
		assertEquals(4.36853e-8, air.viscousLength(), 5e-14);
		assertEquals(6.19560e-8, air.thermalLength(), 5e-14);
	}

	/** Values that the tests of the library openwind give for Ernoult's formulas (RR-9500, 2023) at 20 °C. */
	@ParameterizedTest
	@CsvSource({ "0,0,343.3981674520097,1.2043178612458099", "0.3,0,343.7735353862884,1.2011814376778678",
			"0,0.04,339.8638691545591,1.22428380764581", "0.4,0.06,338.6435360438358,1.2300848827552207" })
	void dampAir(double humidity, double carbonDioxide, double speed, double density) {
		AirConstants air = AirModel.damp(humidity, carbonDioxide).at(20);
		assertEquals(speed, air.speed(), 1e-10);
		assertEquals(density, air.density(), 1e-12);
	}

	/** As above: ratio of heats and heat capacity. */
	@ParameterizedTest
	@CsvSource({ "0,1.4021139129752,1006.0348578821599", "0.3,1.401530299328096,1009.783765203" })
	void heatOfDampAir(double humidity, double heatRatio, double heatCapacity) {
		AirConstants air = AirModel.damp(humidity, 0).at(20);
		assertEquals(heatRatio, air.heatRatio(), 1e-12);
		assertEquals(heatCapacity, air.heatCapacity(), 1e-8);
	}

	/** IEC 61094-2:2009, table F.1: 23 °C, 101 325 Pa, 50 % relative humidity; by formulas of its own. */
	@Test
	void dampAirIsThatOfTheStandardForMicrophones() {
		AirConstants air = AirModel.damp(0.5, 4e-4).at(23);
		assertEquals(345.86652, air.speed(), 0.02);
		assertEquals(1.1860848, air.density(), 3e-4);
		assertEquals(1.4007573, air.heatRatio(), 3e-4);
		assertEquals(1.8265661e-5, air.viscosity(), 1e-7);
	}

	/**
	 * Computed from the formulas of each: ISO 9613-1:1993 and O. Cramer, J. Acoust. Soc. Am. 93 (1993) 2510–2516 (dry,
	 * and with a relative humidity of 50 %; above 30 °C beyond his range), density of CIPM-2007 at 50 %. Keefe states
	 * ten degrees about 26.85 °C.
	 */
	@ParameterizedTest
	@CsvFileSource(resources = "air.csv", numLinesToSkip = 1)
	void modelsAgreeWithEachOther(double celsius, double iso, double speed, double density, double viscosity,
			double keefeSpeed, double keefeDensity, double keefeViscosity, double cramerDry, double cramerDamp,
			double dampDensity) {
		AirConstants dry = AirModel.CHAIGNE_KERGOMARD.at(celsius);
		AirConstants keefe = AirModel.KEEFE.at(celsius);
		AirConstants damp = AirModel.damp(0.5, 4e-4).at(celsius);
		assertEquals(speed, dry.speed(), 6e-4);
		assertEquals(density, dry.density(), 6e-6);
		assertEquals(viscosity, dry.viscosity() * 1e5, 6e-5);
		assertEquals(keefeSpeed, keefe.speed(), 6e-4);
		assertEquals(keefeDensity, keefe.density(), 6e-6);
		assertEquals(keefeViscosity, keefe.viscosity() * 1e5, 6e-5);
		assertEquals(iso, dry.speed(), 0.2);
		assertEquals(cramerDry, dry.speed(), 0.06);
		assertEquals(cramerDamp, damp.speed(), 0.1);
		assertEquals(dampDensity, damp.density(), 0.001);
	}

	@Test
	void badAirIsRefused() {
		assertThrows(IllegalArgumentException.class, () -> AirModel.damp(1.1, 0));
		assertThrows(IllegalArgumentException.class, () -> AirModel.damp(0.5, 0.2));
		assertThrows(IllegalArgumentException.class, () -> AirModel.damp(Double.NaN, 0));
		assertThrows(IllegalArgumentException.class, () -> AirModel.KEEFE.at(-400));
		assertThrows(IllegalArgumentException.class, () -> new AirConstants(343, 1.2, 0, 0.02, 1004, 1.4));
	}
}
