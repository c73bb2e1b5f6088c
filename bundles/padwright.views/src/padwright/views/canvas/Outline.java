package padwright.views.canvas;

import org.eclipse.swt.graphics.Device;
import org.eclipse.swt.graphics.Path;

import padwright.drawing.scene.PathSink;
import padwright.drawing.scene.Transform;

/** An outline as a path of a window, mapped on the way. To be disposed of. */
final class Outline implements PathSink {

	private final Path path;
	private final Transform map;

	Outline(Device device, Transform map) {
		this.path = new Path(device);
		this.map = map;
	}

	Path path() {
		return path;
	}

	@Override
	public void moveTo(double x, double y) {
		path.moveTo(x(x, y), y(x, y));
	}

	@Override
	public void lineTo(double x, double y) {
		path.lineTo(x(x, y), y(x, y));
	}

	@Override
	public void curveTo(double x1, double y1, double x2, double y2, double x, double y) {
		path.cubicTo(x(x1, y1), y(x1, y1), x(x2, y2), y(x2, y2), x(x, y), y(x, y));
	}

	@Override
	public void close() {
		path.close();
	}

	private float x(double x, double y) {
		return (float) map.xOf(x, y);
	}

	private float y(double x, double y) {
		return (float) map.yOf(x, y);
	}
}
