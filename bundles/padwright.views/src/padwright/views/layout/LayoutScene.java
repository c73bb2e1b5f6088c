package padwright.views.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import padwright.drawing.scene.Drawn;
import padwright.drawing.scene.Element;
import padwright.drawing.scene.Face;
import padwright.drawing.scene.Group;
import padwright.drawing.scene.Line;
import padwright.drawing.scene.Rectangle;
import padwright.drawing.scene.Scene;
import padwright.drawing.scene.Stroke;
import padwright.drawing.scene.Style;
import padwright.drawing.scene.Text;
import padwright.views.Messages;
import padwright.views.Palette;

/**
 * A layout, life-size in mm: the tube unrolled with rulers, the side view, and what has no place. Each thing is a named
 * group in the unrolled view.
 */
public final class LayoutScene {

	private static final double ACCENT = 0.5;

	/** Of the drawing: what stays while something is dragged, or what is on its way. */
	private enum Part {
		ALL, STILL, MOVING
	}

	private final LayoutPicture picture;
	private final Palette palette;
	private final Part part;

	private LayoutScene(LayoutPicture picture, Palette palette, Part part) {
		this.picture = picture;
		this.part = part;
		this.palette = picture.layout().fault().isPresent() ? palette.greyed() : palette;
	}

	/** The drawing, or a word where there is nothing to draw. */
	public static Scene draw(LayoutPicture picture, Palette palette) {
		return picture.layout().system().isEmpty() ? nothing(palette)
				: new LayoutScene(picture, palette, Part.ALL).scene();
	}

	/** Without what is being dragged, and as large. */
	public static Scene still(LayoutPicture picture, Palette palette) {
		return new LayoutScene(picture, palette, Part.STILL).scene();
	}

	/** Only what is being dragged, as large as the whole. */
	public static Scene moving(LayoutPicture picture, Palette palette) {
		return new LayoutScene(picture, palette, Part.MOVING).scene();
	}

	private boolean isOfPart(String id) {
		return part == Part.ALL || picture.moving().contains(id) == (part == Part.MOVING);
	}

	/** With something that is dragged its couplings go. */
	private boolean isOfPart(LayoutLink link) {
		boolean isMoving = picture.moving().contains(link.from()) || picture.moving().contains(link.to());
		return part == Part.ALL || isMoving == (part == Part.MOVING);
	}

	private static Scene nothing(Palette palette) {
		return new Scene(Messages.of("layout.name"), 160, 60, List.of(
				Text.centred(Messages.of("layout.empty"), 80, 30, Face.REGULAR, 4).in(palette.quiet())));
	}

	private Scene scene() {
		LayoutGeometry geometry = picture.geometry();
		Layout layout = picture.layout();
		List<Element> elements = new ArrayList<>();
		if (part != Part.MOVING) {
			elements.addAll(new LayoutGround(picture, palette).draw());
		}
		elements.addAll(new SideView(picture, palette).draw(part != Part.MOVING, item -> isOfPart(item.id())));
		elements.addAll(new LinkLines(picture, palette).draw(this::isOfPart));
		Map<String, Text> names = part == Part.MOVING ? LayoutLabels.ofMoving(picture) : LayoutLabels.of(picture);
		for (LayoutItem item : inDrawingOrder()) {
			elements.add(new ItemDrawing(picture, item, Optional.ofNullable(names.get(item.id())), palette).draw());
		}
		if (part != Part.STILL) {
			elements.addAll(new LayoutDimensions(picture, palette).draw());
			picture.stretch().ifPresent(stretch -> elements.add(stretched(stretch)));
		}
		return new Scene(layout.system().orElseThrow().getName() == null ? Messages.of("layout.name")
				: layout.system().orElseThrow().getName(), geometry.width(), geometry.height(), elements);
	}

	/** Rods lie under cups, touches over them; what is chosen lies on top. */
	private List<LayoutItem> inDrawingOrder() {
		List<LayoutItem> order = new ArrayList<>(picture.layout().items());
		order.removeIf(item -> !isOfPart(item.id()));
		Set<String> chosen = picture.selected();
		order.sort((one, other) -> Integer.compare(layer(one, chosen), layer(other, chosen)));
		return order;
	}

	private static int layer(LayoutItem item, Set<String> chosen) {
		int own = switch (item.kind()) {
		case ROD -> 0;
		case KEY -> 1;
		case CUP -> 2;
		case HOLE -> 3;
		case LEVER -> 4;
		case TOUCH -> 5;
		};
		return own + (chosen.contains(item.id()) ? 10 : 0);
	}

	private Element stretched(LayoutStretch stretch) {
		Stroke stroke = Stroke.of(palette.accent(), ACCENT).dashed(1.5, 1);
		var bounds = stretch.bounds();
		return Group.of(List.of(new Drawn(stretch.from().isPresent()
				? new Line(stretch.x(), stretch.y(), stretch.toX(), stretch.toY())
				: new Rectangle(bounds.left(), bounds.top(), bounds.width(), bounds.height()), Style.stroked(stroke))));
	}
}
