package padwright.views.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

import padwright.drawing.font.DejaVuMetrics;
import padwright.drawing.scene.Anchor;
import padwright.drawing.scene.Drawn;
import padwright.drawing.scene.Element;
import padwright.drawing.scene.Face;
import padwright.drawing.scene.Line;
import padwright.drawing.scene.Path;
import padwright.drawing.scene.Rectangle;
import padwright.drawing.scene.SolidFill;
import padwright.drawing.scene.Stroke;
import padwright.drawing.scene.Style;
import padwright.drawing.scene.Text;
import padwright.engine.length.Length;
import padwright.views.Figures;
import padwright.views.Palette;

/** The measures of what is chosen: from the upper end of its joint, and to its neighbours; while dragging, its figure. */
record LayoutDimensions(LayoutPicture picture, Palette palette) {

	private static final double SIZE = 3;
	private static final double NEAR = 0.25;

	private double size() {
		return picture.letters(SIZE);
	}

	List<Element> draw() {
		List<Element> elements = new ArrayList<>();
		Layout layout = picture.layout();
		Optional<LayoutItem> one = picture.anchor().or(() -> picture.selected().size() == 1
				? layout.item(picture.selected().iterator().next()) : Optional.empty());
		one.filter(item -> item.along().isPresent()).ifPresent(item -> elements.addAll(of(layout, item)));
		picture.anchor().ifPresent(item -> elements.addAll(figure(item)));
		return elements;
	}

	private List<Element> of(Layout layout, LayoutItem item) {
		Length along = item.along().orElseThrow();
		LayoutJoint joint = layout.jointAt(along);
		double y = picture.geometry().bottom() + 3;
		List<Element> elements = new ArrayList<>(dimension(joint.start(), along, y + size() * 2.3, Anchor.END));
		neighbour(layout, item, true).ifPresent(before -> elements.addAll(dimension(before, along, y, Anchor.END)));
		neighbour(layout, item, false).ifPresent(behind -> elements.addAll(dimension(along, behind, y, Anchor.START)));
		return elements;
	}

	private static Optional<Length> neighbour(Layout layout, LayoutItem item, boolean before) {
		Length along = item.along().orElseThrow();
		Comparator<Length> order = Comparator.naturalOrder();
		List<Length> others = layout.items().stream()
				.filter(each -> each.kind() == item.kind() && !each.id().equals(item.id()))
				.flatMap(each -> each.along().stream())
				.filter(place -> before ? place.isShorterThan(along) : place.isLongerThan(along)).toList();
		return before ? others.stream().max(order) : others.stream().min(order);
	}

	/** @param narrow which end of the figure stays at its end of the stretch, where it does not fit into that */
	private List<Element> dimension(Length from, Length to, double y, Anchor narrow) {
		double left = picture.geometry().x(from);
		double right = picture.geometry().x(to);
		if (right - left < 0.5) {
			return List.of();
		}
		Stroke thin = Stroke.of(palette.accent(), 0.25);
		String text = Figures.millimetres(to.minus(from));
		double width = new DejaVuMetrics().width(text, Face.CONDENSED, size());
		List<Element> elements = new ArrayList<>(List.of(
				line(left, y, right, y, thin), line(left, y - 4, left, y + 1, thin), line(right, y - 4, right, y + 1, thin),
				arrow(left, y, 1), arrow(right, y, -1)));
		boolean fits = width + 5 < right - left;
		double beside = narrow == Anchor.END ? right - NEAR * size() : left + NEAR * size();
		Text figure = fits ? Text.of(text, (left + right) / 2, y - size() * 0.27, Face.CONDENSED, size()).anchored(Anchor.MIDDLE)
				: Text.of(text, beside, y + size() * 1.13, Face.CONDENSED, size()).anchored(narrow);
		elements.add(figure.in(palette.accent()));
		return elements;
	}

	private static Element line(double x1, double y1, double x2, double y2, Stroke stroke) {
		return new Drawn(new Line(x1, y1, x2, y2), Style.stroked(stroke));
	}

	private Element arrow(double x, double y, int way) {
		Path.Recorder arrow = new Path.Recorder();
		arrow.moveTo(x, y);
		arrow.lineTo(x + way * 1.8, y - 0.55);
		arrow.lineTo(x + way * 1.8, y + 0.55);
		arrow.close();
		return new Drawn(arrow.path(), Style.filled(palette.accent()));
	}

	/** Beside what is being dragged, on a plate, so that it is read over anything. */
	private List<Element> figure(LayoutItem item) {
		Spot spot = Spot.of(picture, item);
		String text = picture.figure().orElse("");
		double width = new DejaVuMetrics().width(text, Face.BOLD, size()) + 3;
		double left = Math.max(1, Math.min(picture.geometry().width() - width - 1, spot.x() + item.radius() + 2));
		double top = Math.max(1, spot.y() - item.radius() - 6);
		return List.of(new Drawn(new Rectangle(left, top, width, size() * 1.7),
				Style.of(new SolidFill(palette.ground()), Stroke.of(palette.accent(), 0.3))),
				Text.of(text, left + 1.5, top + size() * 1.2, Face.BOLD, size()).in(palette.ink()));
	}
}
