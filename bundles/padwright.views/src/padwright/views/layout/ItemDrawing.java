package padwright.views.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import padwright.drawing.scene.Circle;
import padwright.drawing.scene.Drawn;
import padwright.drawing.scene.Element;
import padwright.drawing.scene.Geometry;
import padwright.drawing.scene.Group;
import padwright.drawing.scene.Ink;
import padwright.drawing.scene.Line;
import padwright.drawing.scene.Path;
import padwright.drawing.scene.Rectangle;
import padwright.drawing.scene.SolidFill;
import padwright.drawing.scene.Stroke;
import padwright.drawing.scene.Style;
import padwright.drawing.scene.Text;
import padwright.views.Figures;
import padwright.views.Palette;

/**
 * One thing of a layout in a shape of its own: cups and holes are circles, a lever is a long drop, a touch a rounded plate,
 * a rod a double line between posts. What is inherited has a broken outline.
 *
 * @param name where there is room for it
 */
record ItemDrawing(LayoutPicture picture, LayoutItem item, Optional<Text> name, Palette palette) {

	private static final double HALO = 1;

	Group draw() {
		Spot spot = Spot.of(picture, item);
		List<Element> elements = new ArrayList<>();
		if (picture.selected().contains(item.id())) {
			elements.add(halo(spot));
		}
		switch (item.kind()) {
		case ROD -> elements.addAll(rod(spot));
		case TOUCH -> elements.add(shape(plate(spot), pressed() ? 0.75 : 0.3));
		case LEVER -> elements.add(shape(drop(spot), moved() ? 0.6 : 0.12));
		default -> elements.addAll(round(spot));
		}
		name.ifPresent(text -> elements
				.add(text.in(item.origin() == LayoutOrigin.INHERITED ? palette.quiet() : palette.ink())));
		return Group.named(item.id(), LayoutWords.detail(picture.layout(), item), elements);
	}

	private Ink ink() {
		if (picture.motion().isShown() && (pressed() || moved())) {
			return palette.accent();
		}
		return switch (item.origin()) {
		case OWN -> palette.ink();
		case CHANGED -> palette.solved();
		case INHERITED -> palette.quiet();
		};
	}

	private Stroke stroke(double width) {
		Stroke stroke = Stroke.of(ink(), width);
		return item.origin() == LayoutOrigin.INHERITED ? stroke.dashed(1.4, 0.7) : stroke;
	}

	private boolean pressed() {
		return picture.motion().pressed().contains(item.id());
	}

	private boolean moved() {
		return picture.motion().moved().contains(item.id());
	}

	private Element shape(Geometry outline, double strength) {
		return new Drawn(outline, Style.of(new SolidFill(palette.tint(ink(), strength)), stroke(0.4)));
	}

	private List<Element> round(Spot spot) {
		boolean isShut = picture.motion().isShown() && picture.motion().shut().contains(item.id());
		boolean isHole = item.kind() == LayoutKind.HOLE;
		List<Element> elements = new ArrayList<>();
		elements.add(new Drawn(new Circle(spot.x(), spot.y(), item.radius()), Style.of(
				new SolidFill(isShut ? palette.tint(ink(), 0.4) : isHole ? palette.ground() : palette.tint(ink(), 0.1)),
				stroke(isHole ? 0.7 : 0.5))));
		if (!isHole) {
			item.hole().map(Figures::mm).filter(hole -> hole / 2 < item.radius() - 0.3).ifPresent(
					hole -> elements.add(new Drawn(new Circle(spot.x(), spot.y(), hole / 2),
							Style.stroked(Stroke.of(palette.tint(palette.quiet(), 0.8), 0.2).dashed(0.7, 0.6)))));
		}
		if (item.closed()) {
			elements.add(new Drawn(new Circle(spot.x(), spot.y(), item.radius() - 0.9), Style.stroked(ink(), 0.3)));
		}
		return elements;
	}

	private Path plate(Spot spot) {
		double wide = item.radius();
		double high = item.radius() * 0.72;
		double corner = high * 0.9;
		Path.Recorder path = new Path.Recorder();
		path.moveTo(spot.x() - wide + corner, spot.y() - high);
		path.lineTo(spot.x() + wide - corner, spot.y() - high);
		path.curveTo(spot.x() + wide, spot.y() - high, spot.x() + wide, spot.y() + high, spot.x() + wide - corner,
				spot.y() + high);
		path.lineTo(spot.x() - wide + corner, spot.y() + high);
		path.curveTo(spot.x() - wide, spot.y() + high, spot.x() - wide, spot.y() - high, spot.x() - wide + corner,
				spot.y() - high);
		path.close();
		return path.path();
	}

	private Path drop(Spot spot) {
		double wide = item.radius() * 1.3;
		double high = item.radius() * 0.6;
		Path.Recorder path = new Path.Recorder();
		path.moveTo(spot.x() - wide, spot.y());
		path.curveTo(spot.x() - wide / 2, spot.y() - high * 0.4, spot.x(), spot.y() - high, spot.x() + wide / 2,
				spot.y() - high);
		path.curveTo(spot.x() + wide * 1.2, spot.y() - high, spot.x() + wide * 1.2, spot.y() + high, spot.x() + wide / 2,
				spot.y() + high);
		path.curveTo(spot.x(), spot.y() + high, spot.x() - wide / 2, spot.y() + high * 0.4, spot.x() - wide, spot.y());
		path.close();
		return path.path();
	}

	private List<Element> rod(Spot spot) {
		double from = spot.x() - item.radius();
		double to = spot.x() + item.radius();
		return List.of(
				new Drawn(new Line(from, spot.y(), to, spot.y()), Style.stroked(Stroke.of(ink(), 1.6))),
				new Drawn(new Line(from, spot.y(), to, spot.y()), Style.stroked(Stroke.of(palette.ground(), 0.8))),
				post(from, spot.y()), post(to, spot.y()));
	}

	private Element post(double x, double y) {
		return new Drawn(new Rectangle(x - 1, y - 1.6, 2, 3.2),
				Style.of(new SolidFill(palette.tint(ink(), 0.35)), stroke(0.35)));
	}

	private Element halo(Spot spot) {
		double wide = item.radius() + HALO;
		double high = item.kind() == LayoutKind.ROD ? 3 : item.radius() + HALO;
		return new Drawn(item.kind() == LayoutKind.ROD
				? new Rectangle(spot.x() - wide, spot.y() - high, 2 * wide, 2 * high)
				: new Circle(spot.x(), spot.y(), wide), Style.stroked(palette.accent(), 0.9));
	}
}
