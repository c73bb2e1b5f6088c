package padwright.views.map;

import padwright.drawing.scene.Scene;
import padwright.views.Palette;

/** The marks of states alone, for lists. */
public final class StateMarks {

	/** Room for the corners of the sharpest mark. */
	private static final double SIZE = 2.7;

	private StateMarks() {
	}

	/** A square drawing of a mark. */
	public static Scene draw(KeyState state, Palette palette) {
		return new Scene(state.inWords(), SIZE, SIZE, new StateMark(state, SIZE / 2, SIZE / 2, 1).draw(palette));
	}
}
