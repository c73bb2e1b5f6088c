package padwright.views.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import padwright.drawing.font.DejaVuMetrics;
import padwright.drawing.scene.Anchor;
import padwright.drawing.scene.Bounds;
import padwright.drawing.scene.Face;
import padwright.drawing.scene.Text;

/**
 * Where the names of things are written: in the shape where they can be read there, else below or above it, nearer or
 * further, where they meet no other name and no other thing; else not at all. What is chosen or pressed always has its name.
 */
final class LayoutLabels {

	private static final double LARGEST = 4.6;
	private static final double SMALLEST = 2.4;
	private static final double SMALL = 2.8;
	/** Of the radius of a shape, that its name fills at most. */
	private static final double FILLED = 1.7;
	private static final double ABOVE_BASELINE = 0.76;
	private static final double HIGH = 0.96;
	private static final double LINE = 1.05;
	/** How far below its shape a name begins, and how far above it ends, of the size of its letters. */
	private static final double BELOW = 0.95;
	private static final double OVER = 0.25;
	/** The numbers of the ruler end so far above the tube, mm. */
	private static final double RULER = 2.5;
	private static final DejaVuMetrics METRICS = new DejaVuMetrics();

	private final LayoutPicture picture;
	private final List<Bounds> names = new ArrayList<>();
	private final Map<String, Bounds> shapes = new HashMap<>();
	private final Map<String, Text> placed = new HashMap<>();

	private LayoutLabels(LayoutPicture picture) {
		this.picture = picture;
	}

	/** By the ids of what is written. What is being dragged takes no room from what stays, and has its name over anything. */
	static Map<String, Text> of(LayoutPicture picture) {
		LayoutLabels labels = new LayoutLabels(picture);
		labels.names.add(new Bounds(0, 0, picture.geometry().width(), picture.geometry().top() - RULER));
		List<LayoutItem> items = new ArrayList<>(picture.layout().items());
		items.removeIf(labels::isMoving);
		items.sort(Comparator.comparing(labels::isCalledFor).reversed().thenComparing(LayoutItem::kind));
		items.forEach(labels::shape);
		items.forEach(labels::place);
		labels.placed.putAll(ofMoving(picture));
		return labels.placed;
	}

	/** Only of what is being dragged, which is asked for with every step of the mouse. */
	static Map<String, Text> ofMoving(LayoutPicture picture) {
		LayoutLabels labels = new LayoutLabels(picture);
		picture.layout().items().stream().filter(labels::isMoving).filter(labels::isNamed)
				.forEach(item -> labels.placed.put(item.id(), labels.anyhow(item)));
		return labels.placed;
	}

	private boolean isMoving(LayoutItem item) {
		return picture.moving().contains(item.id());
	}

	private boolean isCalledFor(LayoutItem item) {
		return picture.selected().contains(item.id()) || picture.motion().pressed().contains(item.id());
	}

	private void shape(LayoutItem item) {
		if (item.kind() != LayoutKind.ROD) {
			Spot spot = Spot.of(picture, item);
			double high = half(item);
			shapes.put(item.id(), new Bounds(spot.x() - item.radius(), spot.y() - high, 2 * item.radius(), 2 * high));
		}
	}

	private static double half(LayoutItem item) {
		return switch (item.kind()) {
		case TOUCH, LEVER -> item.radius() * 0.72;
		case ROD -> 0.6;
		default -> item.radius();
		};
	}

	/** A rod lies among the keys, where its name would be in the way. */
	private boolean isNamed(LayoutItem item) {
		return item.kind() != LayoutKind.ROD || picture.selected().contains(item.id());
	}

	private Text anyhow(LayoutItem item) {
		return inside(item).orElseGet(() -> outside(item).get(0));
	}

	private void place(LayoutItem item) {
		if (isNamed(item)) {
			inside(item).filter(text -> isFree(bounds(text), Optional.empty()))
					.or(() -> outside(item).stream().filter(text -> isFree(bounds(text), Optional.of(item.id()))).findFirst())
					.or(() -> Optional.of(item).filter(this::isCalledFor).map(this::anyhow)).ifPresent(text -> {
						placed.put(item.id(), text);
						names.add(bounds(text));
					});
		}
	}

	private static Bounds bounds(Text text) {
		double wide = METRICS.width(text.text(), text.face(), text.size());
		return new Bounds(text.x() - wide / 2, text.baseline() - ABOVE_BASELINE * text.size(), wide, HIGH * text.size());
	}

	/** @param besides the shape that a name stands beside; nothing where it stands inside one */
	private boolean isFree(Bounds name, Optional<String> besides) {
		return names.stream().noneMatch(name::overlaps) && (besides.isEmpty() || shapes.entrySet().stream()
				.noneMatch(other -> !other.getKey().equals(besides.get()) && name.overlaps(other.getValue())));
	}

	private Optional<Text> inside(LayoutItem item) {
		if (item.kind() == LayoutKind.ROD || item.kind() == LayoutKind.TOUCH || item.kind() == LayoutKind.LEVER) {
			return Optional.empty();
		}
		double wide = METRICS.width(item.label(), Face.CONDENSED_BOLD, 1);
		double most = item.radius() * FILLED / Math.max(1, wide);
		double size = Math.max(Math.min(Math.min(LARGEST, item.radius()), item.radius() * FILLED / wide), picture.least());
		Spot spot = Spot.of(picture, item);
		return size < SMALLEST || size > most ? Optional.empty()
				: Optional.of(Text.centred(item.label(), spot.x(), spot.y(), Face.CONDENSED_BOLD, size));
	}

	private List<Text> outside(LayoutItem item) {
		double size = picture.letters(SMALL);
		Spot spot = Spot.of(picture, item);
		double half = METRICS.width(item.label(), Face.CONDENSED, size) / 2;
		double x = Math.max(half, Math.min(picture.geometry().width() - half, spot.x()));
		double below = spot.y() + half(item) + size * BELOW;
		double above = spot.y() - half(item) - size * OVER;
		boolean isInTray = item.along().isEmpty();
		List<Double> lines = isInTray ? List.of(below) : item.kind() == LayoutKind.ROD ? List.of(above, below)
				: List.of(below, above, below + size * LINE, above - size * LINE);
		return lines.stream().map(y -> Text.of(item.label(), x, y, Face.CONDENSED, size).anchored(Anchor.MIDDLE)).toList();
	}
}
