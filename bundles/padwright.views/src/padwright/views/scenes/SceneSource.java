package padwright.views.scenes;

import padwright.drawing.scene.Scene;

/** Makes a drawing for a window. Called on the window's thread: it lays out what is known and computes nothing. */
@FunctionalInterface
public interface SceneSource {

	/**
	 * The drawing.
	 *
	 * @param aspect width of the window over its height, so that the drawing can be laid out to fill it
	 */
	Scene draw(double aspect);
}
