package padwright.views.clock;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;

import padwright.drawing.scene.Drawn;
import padwright.drawing.scene.Group;
import padwright.drawing.scene.Ink;
import padwright.drawing.scene.Scene;
import padwright.drawing.scene.SolidFill;
import padwright.drawing.scene.Text;
import padwright.engine.clock.ClockHour;
import padwright.views.Contrast;
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

	/** Forms have a grey of their own, light or dark. */
	@Test
	void figuresAreReadInEveryForm() {
		for (Palette palette : List.of(Palette.light().on(Ink.grey(246)), Palette.dark().on(Ink.grey(46)))) {
			Scene clock = HourPicture.draw(Set.of(ClockHour.ofHour(3)), palette);
			List<Group> hours = clock.elements().stream().filter(Group.class::isInstance).map(Group.class::cast)
					.filter(hour -> hour.elements().size() > 1).toList();
			assertEquals(12, hours.size());
			hours.forEach(hour -> {
				Ink ground = ((SolidFill) ((Drawn) hour.elements().get(0)).style().fill().orElseThrow()).ink();
				Ink figure = ((Text) hour.elements().get(1)).ink();
				double contrast = Contrast.between(palette.shown(figure), palette.shown(ground));
				assertTrue(contrast >= Contrast.OF_TEXT, hour.id() + " has " + contrast);
			});
		}
	}
}
