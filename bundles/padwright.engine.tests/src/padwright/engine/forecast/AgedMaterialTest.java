package padwright.engine.forecast;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;

import org.junit.jupiter.api.Test;

class AgedMaterialTest {

	private static final AgedMaterial FIBRE = new AgedMaterial("microfibre", LocalDate.of(2020, 2, 29), 6);

	@Test
	void itIsOverdueTheDayAfterItIsDue() {
		LocalDate due = LocalDate.of(2026, 2, 28);
		assertEquals(due, FIBRE.due());
		assertFalse(FIBRE.isOverdue(due));
		assertTrue(FIBRE.isOverdue(due.plusDays(1)));
		assertEquals(0, FIBRE.daysLeft(due));
		assertEquals(-1, FIBRE.daysLeft(due.plusDays(1)));
		assertEquals(365, FIBRE.daysLeft(due.minusYears(1)));
	}

	@Test
	void aLimitBelowAYearIsRefused() {
		LocalDate today = LocalDate.of(2026, 1, 1);
		assertThrows(IllegalArgumentException.class, () -> new AgedMaterial("felt", today, 0));
	}
}
