package padwright.views.map;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

import padwright.drawing.layout.Lanes;
import padwright.drawing.scene.Circle;
import padwright.drawing.scene.Drawn;
import padwright.drawing.scene.Element;
import padwright.drawing.scene.Path;
import padwright.drawing.scene.Stroke;
import padwright.drawing.scene.Style;
import padwright.views.Palette;

/**
 * Which key moves which: from a dot at the driver along a lane beside the tube to an arrow at the driven key. A full line
 * closes, a dashed one opens, a dotted one holds.
 */
record CouplingLines(List<PlacedKey> keys, List<MapCoupling> couplings, Axis axis, Palette palette) {

	private static final double FIRST_LANE = 4.2;
	private static final double LANE = 3.2;
	private static final double CORNER = 1.2;
	private static final double LINE = 0.45;
	/** Lines of one key leave it side by side. */
	private static final double BESIDE = 1.7;

	List<Element> draw() {
		Map<String, PlacedKey> byName = keys.stream()
				.collect(Collectors.toMap(key -> key.key().name(), Function.identity()));
		double edge = keys.stream().mapToDouble(key -> key.across() + key.radius()).max().orElse(0) + FIRST_LANE;
		List<double[]> ends = new ArrayList<>();
		for (int index = 0; index < couplings.size(); index++) {
			ends.add(new double[] { leaves(byName.get(couplings.get(index).driver()), index),
					leaves(byName.get(couplings.get(index).driven()), index) });
		}
		List<Integer> lanes = Lanes.of(ends.stream().map(end -> Lanes.Stretch.between(end[0], end[1])).toList());
		List<Element> elements = new ArrayList<>();
		for (int index = 0; index < couplings.size(); index++) {
			MapCoupling coupling = couplings.get(index);
			elements.addAll(line(byName.get(coupling.driver()), byName.get(coupling.driven()), ends.get(index),
					edge + lanes.get(index) * LANE, stroke(coupling.effect())));
		}
		return elements;
	}

	/** Where along the tube a coupling meets a key, so that those of one key stand apart. */
	private double leaves(PlacedKey key, int index) {
		List<Integer> own = new ArrayList<>();
		for (int other = 0; other < couplings.size(); other++) {
			if (couplings.get(other).driver().equals(key.key().name())
					|| couplings.get(other).driven().equals(key.key().name())) {
				own.add(other);
			}
		}
		return key.along() + (own.indexOf(index) - (own.size() - 1) / 2.0) * BESIDE;
	}

	private List<Element> line(PlacedKey driver, PlacedKey driven, double[] ends, double lane,
			Stroke stroke) {
		double from = edge(driver, ends[0]);
		double to = edge(driven, ends[1]);
		double way = Math.signum(ends[1] - ends[0]) * Math.min(CORNER, Math.abs(ends[1] - ends[0]) / 2);
		Path.Recorder line = new Path.Recorder();
		line.moveTo(x(ends[0], from), y(ends[0], from));
		line.lineTo(x(ends[0], lane - CORNER), y(ends[0], lane - CORNER));
		curve(line, ends[0], lane, ends[0] + way, lane);
		line.lineTo(x(ends[1] - way, lane), y(ends[1] - way, lane));
		curve(line, ends[1], lane, ends[1], lane - CORNER);
		line.lineTo(x(ends[1], to + 1.6), y(ends[1], to + 1.6));
		return List.of(new Drawn(line.path(), Style.stroked(stroke)),
				new Drawn(new Circle(x(ends[0], from + 0.5), y(ends[0], from + 0.5), 0.8),
						Style.filled(palette.ink())),
				new Drawn(arrow(ends[1], to), Style.filled(palette.ink())));
	}

	private Stroke stroke(MapCoupling.Effect effect) {
		Stroke full = Stroke.of(palette.ink(), LINE);
		return switch (effect) {
		case CLOSES -> full;
		case OPENS -> full.dashed(2.2, 1.1);
		case HOLDS -> full.dashed(LINE, 0.9);
		};
	}

	/** Where the outline of a cup is under a place along the tube. */
	private static double edge(PlacedKey key, double along) {
		double aside = Math.min(Math.abs(along - key.along()), key.radius() * 0.9);
		return key.across() + Math.sqrt(key.radius() * key.radius() - aside * aside) + 1.3;
	}

	private void curve(Path.Recorder line, double cornerAlong, double cornerAcross, double along, double across) {
		line.curveTo(x(cornerAlong, cornerAcross), y(cornerAlong, cornerAcross), x(cornerAlong, cornerAcross),
				y(cornerAlong, cornerAcross), x(along, across), y(along, across));
	}

	private Path arrow(double along, double tip) {
		Path.Recorder arrow = new Path.Recorder();
		arrow.moveTo(x(along, tip), y(along, tip));
		arrow.lineTo(x(along - 0.95, tip + 2.4), y(along - 0.95, tip + 2.4));
		arrow.lineTo(x(along + 0.95, tip + 2.4), y(along + 0.95, tip + 2.4));
		arrow.close();
		return arrow.path();
	}

	private double x(double along, double across) {
		return axis.x(along, across);
	}

	private double y(double along, double across) {
		return axis.y(along, across);
	}
}
