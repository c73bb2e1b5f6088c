package padwright.engine.forecast;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;

/**
 * A material with a limit to its age, as fitted: rewrapping a microfibre pad, for one, is poor practice once the fibre
 * is 6 to 8 years old (common practice, no source).
 *
 * @param material what it is
 * @param fitted when it was fitted
 * @param limitYears whole years it may serve, 1 or more
 */
public record AgedMaterial(String material, LocalDate fitted, int limitYears) {

	/** @throws IllegalArgumentException if the limit is below one year */
	public AgedMaterial {
		if (limitYears < 1) {
			throw new IllegalArgumentException(material + " cannot have an age limit of " + limitYears + " years");
		}
	}

	/** The last day it may serve. */
	public LocalDate due() {
		return fitted.plusYears(limitYears);
	}

	public boolean isOverdue(LocalDate today) {
		return today.isAfter(due());
	}

	/** Whole days from {@code today} until it is due, negative when overdue. */
	public long daysLeft(LocalDate today) {
		return ChronoUnit.DAYS.between(today, due());
	}
}
