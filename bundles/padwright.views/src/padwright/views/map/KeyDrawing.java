package padwright.views.map;

import java.util.ArrayList;
import java.util.List;

import padwright.drawing.scene.Anchor;
import padwright.drawing.scene.Circle;
import padwright.drawing.scene.Drawn;
import padwright.drawing.scene.Element;
import padwright.drawing.scene.Face;
import padwright.drawing.scene.Group;
import padwright.drawing.scene.Ink;
import padwright.drawing.scene.Line;
import padwright.drawing.scene.SolidFill;
import padwright.drawing.scene.Stroke;
import padwright.drawing.scene.Style;
import padwright.drawing.scene.Text;
import padwright.views.Palette;

/**
 * One cup, life-size: its rim in the colour of the state, the hole under it dashed, the hinge as a bar, label, touch
 * and the mark of the state. A key closed at rest has a second line inside its rim.
 *
 * @param lane in which row its label stands if it does not fit into the cup
 */
record KeyDrawing(PlacedKey placed, Axis axis, Palette palette, boolean selected, int lane) {

	private static final double BAR = 1.4;
	private static final double RIM = 0.7;
	private static final double SELECTED = 1.3;
	private static final double MARK = 2.6;
	private static final double TOUCH = 4.2;

	Group draw() {
		List<Element> elements = new ArrayList<>();
		if (selected) {
			elements.add(new Drawn(new Circle(x(), y(), radius() + 1.5), Style.stroked(palette.accent(), SELECTED)));
		}
		elements.addAll(hinge());
		elements.addAll(cup());
		elements.addAll(words());
		double mark = Math.min(MARK, radius() * 0.42);
		double diagonal = (radius() + MARK - mark) * Math.sqrt(0.5);
		elements.addAll(new StateMark(placed.key().state(), x() + diagonal, y() - diagonal, mark).draw(palette));
		return Group.named(placed.key().name(), placed.key().detail(), elements);
	}

	private double x() {
		return axis.x(placed.along(), placed.across());
	}

	private double y() {
		return axis.y(placed.along(), placed.across());
	}

	private double radius() {
		return placed.radius();
	}

	private Ink ink() {
		return placed.key().state().ink(palette);
	}

	private List<Element> hinge() {
		return placed.key().hinge().map(side -> {
			double across = placed.across() + (side == MapKey.Side.FAR ? -1 : 1) * (radius() + 0.4);
			double reach = radius() * 0.55;
			return List.<Element>of(new Drawn(
					new Line(axis.x(placed.along() - reach, across), axis.y(placed.along() - reach, across),
							axis.x(placed.along() + reach, across), axis.y(placed.along() + reach, across)),
					Style.stroked(palette.quiet(), BAR)));
		}).orElse(List.of());
	}

	private List<Element> cup() {
		List<Element> elements = new ArrayList<>();
		boolean absent = placed.key().state() == KeyState.ABSENT;
		Stroke rim = Stroke.of(ink(), RIM);
		elements.add(new Drawn(new Circle(x(), y(), radius()),
				Style.of(new SolidFill(palette.tint(ink(), absent ? 0.05 : selected ? 0.34 : 0.17)),
						absent ? rim.dashed(1.2, 0.9) : rim)));
		if (placed.key().closed()) {
			elements.add(new Drawn(new Circle(x(), y(), radius() - 1), Style.stroked(ink(), 0.35)));
		}
		placed.key().hole().filter(hole -> hole < placed.key().cup() - 1).ifPresent(hole -> elements.add(new Drawn(
				new Circle(x(), y(), hole / 2),
				Style.stroked(Stroke.of(palette.tint(palette.quiet(), 0.75), 0.18).dashed(0.7, 0.6)))));
		return elements;
	}

	private List<Element> words() {
		List<Element> elements = new ArrayList<>();
		String touch = placed.key().touch();
		boolean inside = placed.isLabelInside();
		double up = touch.isEmpty() || !inside ? 0 : radius() * 0.16;
		elements.add(inside
				? Text.centred(placed.key().label(), x(), y() - up, Face.CONDENSED_BOLD, placed.labelSize())
						.in(palette.ink())
				: outside());
		if (!touch.isEmpty()) {
			double size = Math.min(TOUCH, radius() * 0.6);
			elements.add(Text.centred(touch, x(), inside ? y() + radius() * 0.48 : y(), Face.CONDENSED, size)
					.in(palette.ink()));
		}
		return elements;
	}

	private Text outside() {
		double away = radius() + 2.6 + (axis == Axis.LYING ? lane * PlacedKey.OUTSIDE * 1.15 : 0);
		Text text = axis == Axis.LYING
				? Text.centred(placed.key().label(), x(), y() - away - 1, Face.CONDENSED_BOLD, PlacedKey.OUTSIDE)
				: Text.centred(placed.key().label(), x() - away, y(), Face.CONDENSED_BOLD, PlacedKey.OUTSIDE)
						.anchored(Anchor.END);
		return text.in(palette.ink());
	}
}
