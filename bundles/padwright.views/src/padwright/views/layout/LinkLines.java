package padwright.views.layout;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;

import padwright.drawing.scene.Circle;
import padwright.drawing.scene.Drawn;
import padwright.drawing.scene.Element;
import padwright.drawing.scene.Ink;
import padwright.drawing.scene.Path;
import padwright.drawing.scene.Stroke;
import padwright.drawing.scene.Style;
import padwright.views.Palette;

/**
 * What moves what, as bows from a dot at the driver to an arrow at what is driven: closing as a whole line, opening as long
 * dashes, holding as a thick stroke of dots. What a touch presses, and what has no place, only where either is chosen.
 */
record LinkLines(LayoutPicture picture, Palette palette) {

	private static final double WIDTH = 0.4;

	List<Element> draw(Predicate<LayoutLink> some) {
		Map<String, LayoutItem> items = new HashMap<>();
		picture.layout().items().forEach(item -> items.put(item.id(), item));
		List<Element> elements = new ArrayList<>();
		for (LayoutLink link : picture.layout().links()) {
			LayoutItem driver = items.get(link.from());
			LayoutItem driven = items.get(link.to());
			boolean isQuiet = link.kind() == LayoutLink.Kind.PRESSES || driver.along().isEmpty()
					|| driven.along().isEmpty();
			if (some.test(link) && (!isQuiet || isChosen(link))) {
				elements.addAll(bow(link, driver, driven));
			}
		}
		return elements;
	}

	private boolean isChosen(LayoutLink link) {
		return picture.selected().contains(link.from()) || picture.selected().contains(link.to())
				|| picture.motion().pressed().contains(link.from());
	}

	private List<Element> bow(LayoutLink link, LayoutItem driver, LayoutItem driven) {
		Spot from = Spot.of(picture, driver);
		Spot to = Spot.of(picture, driven);
		double away = Math.hypot(to.x() - from.x(), to.y() - from.y());
		if (away < 1) {
			return List.of();
		}
		double height = Math.min(14, away * 0.25);
		double normalX = (to.y() - from.y()) / away * height;
		double normalY = -(to.x() - from.x()) / away * height;
		double controlX = (from.x() + to.x()) / 2 + normalX;
		double controlY = (from.y() + to.y()) / 2 + normalY;
		double[] start = edge(from, controlX, controlY, reach(driver));
		double[] end = edge(to, controlX, controlY, reach(driven));
		Path.Recorder line = new Path.Recorder();
		line.moveTo(start[0], start[1]);
		line.curveTo(controlX, controlY, controlX, controlY, end[0], end[1]);
		Ink ink = isChosen(link) ? palette.accent() : palette.tint(palette.ink(), 0.65);
		return List.of(new Drawn(line.path(), Style.stroked(stroke(link.kind(), ink))),
				new Drawn(new Circle(start[0], start[1], 0.7), Style.filled(ink)),
				new Drawn(arrow(end[0], end[1], controlX, controlY), Style.filled(ink)));
	}

	private static double reach(LayoutItem item) {
		return item.kind() == LayoutKind.ROD ? 1 : item.radius();
	}

	private static Stroke stroke(LayoutLink.Kind kind, Ink ink) {
		return switch (kind) {
		case CLOSES -> Stroke.of(ink, WIDTH);
		case OPENS -> Stroke.of(ink, WIDTH).dashed(3, 1.4);
		case HOLDS -> Stroke.of(ink, WIDTH * 2).dashed(0.9, 0.9);
		case PRESSES -> Stroke.of(ink, WIDTH * 0.7).dashed(0.6, 0.9);
		};
	}

	private static double[] edge(Spot spot, double towardX, double towardY, double reach) {
		double away = Math.max(1e-6, Math.hypot(towardX - spot.x(), towardY - spot.y()));
		return new double[] {spot.x() + (towardX - spot.x()) / away * reach, spot.y() + (towardY - spot.y()) / away * reach};
	}

	private static Path arrow(double x, double y, double fromX, double fromY) {
		double away = Math.max(1e-6, Math.hypot(fromX - x, fromY - y));
		double alongX = (fromX - x) / away;
		double alongY = (fromY - y) / away;
		Path.Recorder arrow = new Path.Recorder();
		arrow.moveTo(x, y);
		arrow.lineTo(x + 2.4 * alongX - 0.9 * alongY, y + 2.4 * alongY + 0.9 * alongX);
		arrow.lineTo(x + 2.4 * alongX + 0.9 * alongY, y + 2.4 * alongY - 0.9 * alongX);
		arrow.close();
		return arrow.path();
	}
}
