package padwright.engine.acoustics;

/**
 * Sound pressure over volume flow.
 *
 * @param real part, in Pa·s/m³, or over a characteristic impedance
 * @param imaginary part
 */
public record Impedance(double real, double imaginary) {

	public Impedance over(double characteristic) {
		return new Impedance(real / characteristic, imaginary / characteristic);
	}

	public double magnitude() {
		return StrictMath.hypot(real, imaginary);
	}
}
