package padwright.views.clock;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import padwright.drawing.scene.Circle;
import padwright.drawing.scene.Drawn;
import padwright.drawing.scene.Element;
import padwright.drawing.scene.Face;
import padwright.drawing.scene.Group;
import padwright.drawing.scene.Ink;
import padwright.drawing.scene.Scene;
import padwright.drawing.scene.SolidFill;
import padwright.drawing.scene.Stroke;
import padwright.drawing.scene.Style;
import padwright.drawing.scene.Text;
import padwright.engine.clock.ClockHour;
import padwright.views.Messages;
import padwright.views.Palette;

/** A small clock to choose hours on, in mm: whole hours as figures, the halves between as dots. Each is a named group. */
public final class HourPicture {

	private static final String GROUP = "hour:";
	private static final double SIZE = 30;
	private static final double RADIUS = 12;
	private static final double HOUR = 2;
	private static final double HALF = 1.1;
	private static final double LETTERS = 2.5;
	/** Of the paper: a form's own grey would be taken for a grey on paper, and shown as some other. */
	private static final Ink GROUND = Ink.WHITE;

	private HourPicture() {
	}

	/** The clock with some hours chosen. */
	public static Scene draw(Set<ClockHour> chosen, Palette palette) {
		List<Element> elements = new ArrayList<>();
		elements.add(new Drawn(new Circle(SIZE / 2, SIZE / 2, RADIUS), Style.stroked(palette.tint(palette.quiet(), 0.5), 0.3)));
		for (int station = 0; station < ClockHour.STATIONS; station++) {
			ClockHour hour = new ClockHour(station);
			elements.add(hour(hour, chosen.contains(hour), palette));
		}
		return new Scene(Messages.of("clock.hours"), SIZE, SIZE, elements);
	}

	private static Group hour(ClockHour hour, boolean isChosen, Palette palette) {
		double x = SIZE / 2 + RADIUS * Math.sin(hour.angle());
		double y = SIZE / 2 - RADIUS * Math.cos(hour.angle());
		boolean isWhole = hour.station() % 2 == 0;
		Ink edge = isChosen ? palette.accent() : palette.tint(palette.quiet(), isWhole ? 0.5 : 0.7);
		List<Element> elements = new ArrayList<>();
		elements.add(new Drawn(new Circle(x, y, isWhole ? HOUR : HALF), Style.of(
				new SolidFill(isChosen ? palette.accent() : GROUND), Stroke.of(edge, 0.25))));
		if (isWhole) {
			elements.add(Text.centred(hour.toString(), x, y, isChosen ? Face.BOLD : Face.CONDENSED, LETTERS)
					.in(isChosen ? GROUND : palette.ink()));
		}
		return Group.named(GROUP + hour, Messages.of(isChosen ? "clock.hourChosen" : "clock.hour", hour), elements);
	}

	/** The hour of an id; nothing for other ids. */
	public static Optional<ClockHour> hour(String id) {
		return id.startsWith(GROUP) ? Optional.of(ClockHour.ofHour(new BigDecimal(id.substring(GROUP.length()))))
				: Optional.empty();
	}

	/** The name of an hour in the picture. */
	public static String id(ClockHour hour) {
		return GROUP + hour;
	}

	/**
	 * Some hours with one more, or one less. Where they are in the order of the clock they stay so; else the new one comes
	 * last, since readings go by this order.
	 */
	public static List<ClockHour> toggled(List<ClockHour> hours, ClockHour hour) {
		List<ClockHour> toggled = new ArrayList<>(hours);
		if (!toggled.remove(hour)) {
			toggled.add(isInOrder(hours) ? place(hours, hour) : hours.size(), hour);
		}
		return toggled;
	}

	private static boolean isInOrder(List<ClockHour> hours) {
		int turned = 0;
		for (int index = 1; index < hours.size(); index++) {
			turned += hours.get(index - 1).halfHoursTo(hours.get(index));
		}
		return turned < ClockHour.STATIONS;
	}

	private static int place(List<ClockHour> hours, ClockHour hour) {
		int place = 1;
		while (place < hours.size() && hours.get(0).halfHoursTo(hours.get(place)) < hours.get(0).halfHoursTo(hour)) {
			place++;
		}
		return Math.min(place, hours.size());
	}
}
