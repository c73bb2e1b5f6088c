package padwright.views.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

import padwright.drawing.scene.Drawn;
import padwright.drawing.scene.Element;
import padwright.drawing.scene.Line;
import padwright.drawing.scene.Path;
import padwright.drawing.scene.SolidFill;
import padwright.drawing.scene.Stroke;
import padwright.drawing.scene.Style;
import padwright.views.Figures;
import padwright.views.Palette;

/** The instrument seen by the player: the bore, and what stands on it as far round as it lies. */
record SideView(LayoutPicture picture, Palette palette) {

	/** The tube, if that is asked for, and some of what stands on it. */
	List<Element> draw(boolean withTube, Predicate<LayoutItem> some) {
		List<Element> elements = new ArrayList<>();
		List<Element> behind = new ArrayList<>();
		List<Element> before = new ArrayList<>();
		for (LayoutItem item : picture.layout().items()) {
			if (item.along().isPresent() && some.test(item)) {
				(faces(item) < 0 ? behind : before).addAll(item(item));
			}
		}
		elements.addAll(behind);
		if (withTube) {
			picture.layout().joints().forEach(joint -> elements.add(tube(joint)));
		}
		elements.addAll(before);
		return elements;
	}

	private Element tube(LayoutJoint joint) {
		LayoutGeometry geometry = picture.geometry();
		Path.Recorder outline = new Path.Recorder();
		outline.moveTo(geometry.x(joint.bore().get(0).along()), geometry.sideMiddle());
		joint.bore().forEach(width -> outline.lineTo(geometry.x(width.along()),
				geometry.sideMiddle() - width.diameter() / 2));
		for (int index = joint.bore().size() - 1; index >= 0; index--) {
			LayoutJoint.Width width = joint.bore().get(index);
			outline.lineTo(geometry.x(width.along()), geometry.sideMiddle() + width.diameter() / 2);
		}
		outline.close();
		return new Drawn(outline.path(), Style.of(new SolidFill(palette.tint(palette.quiet(), 0.12)),
				Stroke.of(palette.tint(palette.quiet(), 0.7), 0.3)));
	}

	private SideGeometry geometry() {
		return new SideGeometry(picture.layout(), picture.geometry());
	}

	private static double faces(LayoutItem item) {
		return SideGeometry.faces(item);
	}

	private List<Element> item(LayoutItem item) {
		double x = picture.geometry().x(item.along().orElseThrow());
		boolean chosen = picture.selected().contains(item.id());
		Stroke stroke = Stroke.of(chosen ? palette.accent() : faces(item) < -0.1 ? palette.tint(palette.quiet(), 0.6)
				: palette.quiet(), chosen ? 0.7 : 0.35);
		double foot = geometry().above(item, 0);
		if (item.kind() == LayoutKind.ROD) {
			double y = geometry().above(item, SideGeometry.ROD);
			return List.of(new Drawn(new Line(x - item.radius(), y, x + item.radius(), y), Style.stroked(stroke)),
					new Drawn(new Line(x - item.radius(), foot, x - item.radius(), y), Style.stroked(stroke)),
					new Drawn(new Line(x + item.radius(), foot, x + item.radius(), y), Style.stroked(stroke)));
		}
		double rim = geometry().above(item, Figures.mm(item.chimney()));
		double radius = item.hole().map(hole -> Figures.mm(hole) / 2).orElse(item.radius());
		List<Element> elements = new ArrayList<>();
		elements.addAll(drum(x, foot, rim, radius, item, stroke));
		if (item.kind() == LayoutKind.KEY || item.kind() == LayoutKind.CUP) {
			elements.addAll(drum(x, rim, geometry().above(item, SideGeometry.high(item)), item.radius(), item, stroke));
		}
		return elements;
	}

	/** A round thing between two heights: as an ellipse where it looks at the player, with straight sides else. */
	private List<Element> drum(double x, double foot, double head, double radius, LayoutItem item, Stroke stroke) {
		double flat = Math.max(0.05, Math.abs(faces(item))) * radius;
		Style style = Style.of(new SolidFill(palette.tint(palette.quiet(), 0.06)), stroke);
		return List.of(new Drawn(new Line(x - radius, foot, x - radius, head), Style.stroked(stroke)),
				new Drawn(new Line(x + radius, foot, x + radius, head), Style.stroked(stroke)),
				new Drawn(ellipse(x, head, radius, flat), style));
	}

	private static Path ellipse(double x, double y, double wide, double high) {
		double handle = 0.5523;
		Path.Recorder path = new Path.Recorder();
		path.moveTo(x - wide, y);
		path.curveTo(x - wide, y - high * handle, x - wide * handle, y - high, x, y - high);
		path.curveTo(x + wide * handle, y - high, x + wide, y - high * handle, x + wide, y);
		path.curveTo(x + wide, y + high * handle, x + wide * handle, y + high, x, y + high);
		path.curveTo(x - wide * handle, y + high, x - wide, y + high * handle, x - wide, y);
		path.close();
		return path.path();
	}
}
