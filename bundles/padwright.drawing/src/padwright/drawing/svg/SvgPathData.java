package padwright.drawing.svg;

import padwright.drawing.scene.Geometry;
import padwright.drawing.scene.PathSink;

/** Writes an outline as the {@code d} attribute of an SVG path. */
final class SvgPathData implements PathSink {

	private final StringBuilder data = new StringBuilder();

	/** The outlines one after another. */
	static String of(Iterable<? extends Geometry> geometries) {
		SvgPathData sink = new SvgPathData();
		geometries.forEach(geometry -> geometry.trace(sink));
		return sink.data.toString();
	}

	@Override
	public void moveTo(double x, double y) {
		add('M', x, y);
	}

	@Override
	public void lineTo(double x, double y) {
		add('L', x, y);
	}

	@Override
	public void curveTo(double x1, double y1, double x2, double y2, double x, double y) {
		add('C', x1, y1, x2, y2, x, y);
	}

	@Override
	public void close() {
		data.append('Z');
	}

	private void add(char command, double... coordinates) {
		data.append(command);
		for (int i = 0; i < coordinates.length; i++) {
			data.append(i == 0 ? "" : " ").append(SvgNumber.of(coordinates[i]));
		}
	}
}
