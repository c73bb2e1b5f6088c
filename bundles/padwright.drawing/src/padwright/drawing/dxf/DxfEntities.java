package padwright.drawing.dxf;

import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;

import padwright.drawing.scene.Anchor;
import padwright.drawing.scene.Circle;
import padwright.drawing.scene.Drawn;
import padwright.drawing.scene.ElementVisitor;
import padwright.drawing.scene.FontMetrics;
import padwright.drawing.scene.Group;
import padwright.drawing.scene.Line;
import padwright.drawing.scene.Picture;
import padwright.drawing.scene.Stroke;
import padwright.drawing.scene.Text;
import padwright.drawing.scene.Transform;

/**
 * The entities of a scene: lines, circles, outlines and text, each on the layer of the group it is in. Fillings are left
 * out, so that nothing hides what lies behind it. Group codes are those of the ENTITIES section of the published DXF
 * reference of release 12.
 */
final class DxfEntities implements ElementVisitor {

	static final String PLAIN_LAYER = "0";
	static final String DASHED = "DASHED";
	static final String CONTINUOUS = "CONTINUOUS";
	private static final double ROUNDING = 1e-9;

	private final DxfText text = new DxfText();
	private final Set<String> layers = new TreeSet<>(Set.of(PLAIN_LAYER));
	private Transform map;
	private String layer = PLAIN_LAYER;

	/** @param map from the scene, y down, to the drawing, y up */
	DxfEntities(Transform map) {
		this.map = map;
	}

	Set<String> layers() {
		return layers;
	}

	@Override
	public String toString() {
		return text.toString();
	}

	@Override
	public void visit(Group group) {
		Transform around = map;
		String above = layer;
		map = around.after(group.transform());
		layer = group.id().map(DxfEntities::layerName).orElse(above);
		layers.add(layer);
		group.elements().forEach(element -> element.accept(this));
		map = around;
		layer = above;
	}

	/** Layers of release 12 have names of capitals, digits, and few signs. */
	private static String layerName(String id) {
		return id.toUpperCase(Locale.ROOT).replaceAll("[^A-Z0-9_-]", "_");
	}

	@Override
	public void visit(Drawn drawn) {
		String lineType = drawn.style().stroke().map(Stroke::dash).filter(dash -> !dash.isEmpty()).isPresent() ? DASHED
				: CONTINUOUS;
		if (drawn.geometry() instanceof Line line) {
			begin("LINE", lineType).point(10, map.xOf(line.x1(), line.y1()), map.yOf(line.x1(), line.y1()))
					.point(11, map.xOf(line.x2(), line.y2()), map.yOf(line.x2(), line.y2()));
		} else if (drawn.geometry() instanceof Circle circle && keepsCircles()) {
			begin("CIRCLE", lineType).point(10, map.xOf(circle.x(), circle.y()), map.yOf(circle.x(), circle.y()))
					.group(40, circle.radius() * Math.hypot(map.xx(), map.yx()));
		} else {
			Polylines outline = new Polylines(map);
			drawn.geometry().trace(outline);
			outline.all().forEach(line -> polyline(line, lineType));
		}
	}

	private boolean keepsCircles() {
		return Math.abs(Math.hypot(map.xx(), map.yx()) - Math.hypot(map.xy(), map.yy())) < ROUNDING
				&& Math.abs(map.xx() * map.xy() + map.yx() * map.yy()) < ROUNDING;
	}

	private void polyline(Polylines.Polyline line, String lineType) {
		begin("POLYLINE", lineType).group(66, 1).point(10, 0, 0).group(70, line.isClosed() ? 1 : 0);
		for (double[] point : line.points()) {
			begin("VERTEX", lineType).point(10, point[0], point[1]);
		}
		text.group(0, "SEQEND").group(8, layer);
	}

	/** As high as its capitals; a point is always given for the way it is aligned. */
	@Override
	public void visit(Text words) {
		double x = map.xOf(words.x(), words.baseline());
		double y = map.yOf(words.x(), words.baseline());
		double scale = Math.hypot(map.xx(), map.yx());
		begin("TEXT", CONTINUOUS).point(10, x, y).group(40, words.size() * FontMetrics.CAPITAL_HEIGHT * scale)
				.string(1, words.text()).group(50, Math.toDegrees(Math.atan2(map.yx(), map.xx())));
		if (words.anchor() != Anchor.START) {
			text.group(72, words.anchor() == Anchor.MIDDLE ? 1 : 2).point(11, x, y);
		}
	}

	/** Release 12 knows no pictures, and no sheet of holes has one. */
	@Override
	public void visit(Picture picture) {
		// left out
	}

	private DxfText begin(String kind, String lineType) {
		return text.group(0, kind).group(8, layer).group(6, lineType);
	}
}
