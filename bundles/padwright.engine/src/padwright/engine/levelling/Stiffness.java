package padwright.engine.levelling;

/**
 * How strongly a pad's base bridges the shims behind it: one number per kind of pad, a shop's calibration. 0 follows
 * the film exactly; soft felt is near 0.003, a rigid base near 0.1 (both bench estimates, unverified).
 *
 * @param lambda 0 to 1, no unit
 */
public record Stiffness(double lambda) {

	/** The harmonics that 24 stations can carry: 0 to 12 waves around the clock. */
	public static final int HIGHEST_HARMONIC = 12;

	/** Ratio of bending to twisting stiffness of a round section, 1 + ν with ν = 0.35 (plastics, common practice). */
	private static final double ONE_PLUS_POISSON = 1.35;

	/** @throws IllegalArgumentException if {@code lambda} is not 0 to 1 */
	public Stiffness {
		if (!(lambda >= 0 && lambda <= 1)) {
			throw new IllegalArgumentException("a stiffness of " + lambda + " is not 0 to 1");
		}
		lambda = lambda + 0.0;
	}

	/**
	 * The share of a wave with {@code harmonic} crests around the clock that passes from the film to the face:
	 * Tₙ = 1 / (1 + λ n²(n² − 1)² / (n² + 1 + ν)), a thin ring of circular section on an elastic bed (the classical
	 * out-of-plane ring of Love and Timoshenko; from memory, unverified). T₀ = T₁ = 1: height and tilt pass whole.
	 *
	 * @throws IllegalArgumentException if {@code harmonic} is not 0 to 12
	 */
	public double transmission(int harmonic) {
		if (harmonic < 0 || harmonic > HIGHEST_HARMONIC) {
			throw new IllegalArgumentException("harmonic " + harmonic + " is not 0 to " + HIGHEST_HARMONIC);
		}
		double square = harmonic * harmonic;
		return 1 / (1 + lambda * square * (square - 1) * (square - 1) / (square + ONE_PLUS_POISSON));
	}
}
