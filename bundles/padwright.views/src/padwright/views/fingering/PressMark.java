package padwright.views.fingering;

import java.util.ArrayList;
import java.util.List;

import padwright.drawing.scene.Circle;
import padwright.drawing.scene.Drawn;
import padwright.drawing.scene.Element;
import padwright.drawing.scene.Scene;
import padwright.drawing.scene.Style;
import padwright.views.Palette;

/** Whether a touch is pressed, as a mark on its button: some themes paint a button alike, whether it is down or not. */
public enum PressMark {
	UP(0), HALF(2.6), DOWN(5);

	private static final double SIZE = 16;
	private static final double RING = 6;

	private final double dot;

	PressMark(double dot) {
		this.dot = dot;
	}

	/** A ring, with a dot in it where it is pressed. */
	public Scene draw(Palette palette) {
		boolean isUp = this == UP;
		List<Element> elements = new ArrayList<>();
		elements.add(new Drawn(new Circle(SIZE / 2, SIZE / 2, RING), Style.stroked(isUp ? palette.quiet() : palette.accent(), 1.2)));
		if (!isUp) {
			elements.add(new Drawn(new Circle(SIZE / 2, SIZE / 2, dot), Style.filled(palette.accent())));
		}
		return new Scene(name(), SIZE, SIZE, elements);
	}
}
