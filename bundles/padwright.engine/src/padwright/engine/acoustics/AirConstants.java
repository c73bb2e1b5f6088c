package padwright.engine.acoustics;

/**
 * What sound needs to know of the air at one temperature and one atmosphere.
 *
 * @param speed of sound in m/s
 * @param density in kg/m³
 * @param viscosity in Pa·s
 * @param conductivity of heat in W/(m·K)
 * @param heatCapacity at constant pressure in J/(kg·K)
 * @param heatRatio of the specific heats, above 1
 */
public record AirConstants(double speed, double density, double viscosity, double conductivity, double heatCapacity,
		double heatRatio) {

	/** @throws IllegalArgumentException if one is not above zero, or the ratio not above one */
	public AirConstants {
		if (!(speed > 0 && density > 0 && viscosity > 0 && conductivity > 0 && heatCapacity > 0 && heatRatio > 1)) {
			throw new IllegalArgumentException("no air has a speed of sound of " + speed + " m/s, a density of "
					+ density + " kg/m³, a viscosity of " + viscosity + " Pa·s, a conductivity of " + conductivity
					+ " W/(m·K), a heat capacity of " + heatCapacity + " J/(kg·K) and a ratio of heats of "
					+ heatRatio);
		}
	}

	/** Length that measures friction at a wall, μ / (ρ c), in m. */
	double viscousLength() {
		return viscosity / (density * speed);
	}

	/** Length that measures the heat lost to a wall, κ / (ρ c Cp), in m. */
	double thermalLength() {
		return conductivity / (density * speed * heatCapacity);
	}

	/** Impedance of a plane wave in a tube of this radius in m without losses, ρ c / (π a²), in Pa·s/m³. */
	double impedance(double radius) {
		return density * speed / (Math.PI * radius * radius);
	}
}
