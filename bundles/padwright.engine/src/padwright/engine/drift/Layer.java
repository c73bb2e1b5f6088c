package padwright.engine.drift;

import java.math.BigDecimal;

import padwright.engine.length.Length;

/**
 * One layer of what is in a cup.
 *
 * @param name what it is, as in {@code backing}
 * @param thickness at the bench, 0 or more
 * @param expansion thermal expansion in ppm/K
 * @param swelling growth with the air's humidity in %/%RH
 */
public record Layer(String name, Length thickness, MaterialRange expansion, MaterialRange swelling) {

	/** @throws IllegalArgumentException if the thickness is negative */
	public Layer {
		if (thickness.signum() < 0) {
			throw new IllegalArgumentException("layer " + name + " of " + thickness + " is thinner than nothing");
		}
	}

	/** Change of thickness in nm, not rounded: thickness × (expansion × ΔT + swelling × ΔRH). */
	MaterialRange exactChange(Climate bench, Climate home) {
		BigDecimal warming = home.celsius().subtract(bench.celsius());
		BigDecimal wetting = home.relativeHumidity().subtract(bench.relativeHumidity());
		MaterialRange strain = expansion.times(warming.movePointLeft(6)).plus(swelling.times(wetting.movePointLeft(2)));
		return strain.times(BigDecimal.valueOf(thickness.nanometres()));
	}
}
