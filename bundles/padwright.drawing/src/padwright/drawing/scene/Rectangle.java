package padwright.drawing.scene;

/** An upright rectangle, in mm. */
public record Rectangle(double left, double top, double width, double height) implements Geometry {

	/** @throws IllegalArgumentException if a side is negative */
	public Rectangle {
		if (!(width >= 0 && height >= 0)) {
			throw new IllegalArgumentException("a rectangle cannot be " + width + " by " + height + " mm");
		}
	}

	@Override
	public void trace(PathSink sink) {
		sink.moveTo(left, top);
		sink.lineTo(left + width, top);
		sink.lineTo(left + width, top + height);
		sink.lineTo(left, top + height);
		sink.close();
	}
}
