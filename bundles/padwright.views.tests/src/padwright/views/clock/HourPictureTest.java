package padwright.views.clock;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;

import padwright.engine.clock.ClockHour;
import padwright.views.Palette;
import padwright.views.scenes.Targets;

class HourPictureTest {

	private static List<ClockHour> hours(String... hours) {
		return Stream.of(hours).map(BigDecimal::new).map(ClockHour::ofHour).toList();
	}

	private static List<ClockHour> toggled(List<ClockHour> hours, String hour) {
		return HourPicture.toggled(hours, ClockHour.ofHour(new BigDecimal(hour)));
	}

	@Test
	void hoursStayInTheOrderOfTheClock() {
		assertEquals(hours("12"), toggled(List.of(), "12"));
		assertEquals(hours("12", "1.5", "3"), toggled(hours("12", "3"), "1.5"));
		assertEquals(hours("12", "3", "9"), toggled(hours("12", "3"), "9"));
		assertEquals(hours("9", "12", "3"), toggled(hours("9", "3"), "12"));
		assertEquals(hours("12", "3"), toggled(hours("12", "1.5", "3"), "1.5"));
	}

	/** Readings go by this order. */
	@Test
	void anOrderOfItsOwnIsKept() {
		assertEquals(hours("12", "6", "3", "9", "1"), toggled(hours("12", "6", "3", "9"), "1"));
	}

	@Test
	void everyHalfHourCanBeTouched() {
		Targets targets = Targets.of(HourPicture.draw(Set.of(), Palette.light()));
		assertEquals(ClockHour.STATIONS, targets.all().size());
		targets.all().forEach(target -> assertEquals(target.id(),
				HourPicture.id(HourPicture.hour(target.id()).orElseThrow())));
	}
}
