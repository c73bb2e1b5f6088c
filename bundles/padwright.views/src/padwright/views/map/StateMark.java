package padwright.views.map;

import java.util.List;

import padwright.drawing.scene.Circle;
import padwright.drawing.scene.Drawn;
import padwright.drawing.scene.Element;
import padwright.drawing.scene.Geometry;
import padwright.drawing.scene.Ink;
import padwright.drawing.scene.Path;
import padwright.drawing.scene.RingSector;
import padwright.drawing.scene.SolidFill;
import padwright.drawing.scene.Stroke;
import padwright.drawing.scene.Style;
import padwright.views.Palette;

/**
 * The mark of a state, told from the others by its shape alone: an open ring to be read, a half moon that is read, a
 * piece of film that is solved, a tick that is done, a triangle to look at, a square on its corner that is wrong.
 *
 * @param x of its middle, mm
 * @param y of its middle, mm
 * @param radius mm
 */
record StateMark(KeyState state, double x, double y, double radius) {

	List<Element> draw(Palette palette) {
		Ink ink = state.ink(palette);
		return switch (state) {
		case DRAWN, ABSENT -> List.of();
		case UNREAD -> List.of(plate(palette, ink));
		case READ -> List.of(plate(palette, ink), new Drawn(half(), Style.filled(ink)));
		case SOLVED -> List.of(plate(palette, ink), new Drawn(
				new RingSector(x, y, radius * 0.25, radius * 0.9, -0.4, 2.6), Style.filled(ink)));
		case DONE -> List.of(new Drawn(new Circle(x, y, radius), Style.filled(ink)), lines(palette.ground(),
				-0.5, 0.02, -0.12, 0.42, 0.5, -0.38));
		case WARNING -> List.of(solid(ink, palette, 0, -1.2, 1.15, 0.85, -1.15, 0.85),
				lines(palette.ground(), 0, -0.5, 0, 0.25), dot(palette.ground(), 0.55));
		case ERROR -> List.of(solid(ink, palette, 0, -1.25, 1.25, 0, 0, 1.25, -1.25, 0),
				lines(palette.ground(), -0.4, -0.4, 0.4, 0.4), lines(palette.ground(), 0.4, -0.4, -0.4, 0.4));
		};
	}

	private Element plate(Palette palette, Ink ink) {
		return new Drawn(new Circle(x, y, radius),
				Style.of(new SolidFill(palette.ground()), Stroke.of(ink, radius * 0.28)));
	}

	private Geometry half() {
		Path.Recorder half = new Path.Recorder();
		half.moveTo(x, y - radius);
		double handle = radius * 4 / 3;
		half.curveTo(x - handle, y - radius, x - handle, y + radius, x, y + radius);
		half.close();
		return half.path();
	}

	private Element dot(Ink ink, double below) {
		return new Drawn(new Circle(x, y + below * radius, radius * 0.14), Style.filled(ink));
	}

	private Element solid(Ink ink, Palette palette, double... points) {
		Path.Recorder outline = through(points);
		outline.close();
		return new Drawn(outline.path(), Style.of(new SolidFill(ink), Stroke.of(palette.ground(), radius * 0.12)));
	}

	private Element lines(Ink ink, double... points) {
		return new Drawn(through(points).path(), Style.stroked(ink, radius * 0.28));
	}

	private Path.Recorder through(double... points) {
		Path.Recorder outline = new Path.Recorder();
		outline.moveTo(x + points[0] * radius, y + points[1] * radius);
		for (int index = 2; index < points.length; index += 2) {
			outline.lineTo(x + points[index] * radius, y + points[index + 1] * radius);
		}
		return outline;
	}
}
