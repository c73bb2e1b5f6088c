package padwright.workup.forecast;

import java.time.LocalDate;
import java.util.List;

import padwright.engine.forecast.AgedMaterial;

/**
 * One material in some cups of an instrument.
 *
 * @param instrument its serial number, or its key system
 * @param player whose it is
 * @param material what, since when and for how long; years in part are cut off, but for the first
 * @param keys labels of the keys
 */
public record AgedPads(String instrument, String player, AgedMaterial material, List<String> keys) {

	public AgedPads {
		keys = List.copyOf(keys);
	}

	/** Whether it is past its limit, or will be before a year is over. */
	public boolean isPastOrNear(LocalDate today) {
		return material.isOverdue(today.plusYears(1));
	}
}
