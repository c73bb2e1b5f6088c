package padwright.views.scenes;

import padwright.drawing.scene.Bounds;

/**
 * Something of a drawing that can be touched.
 *
 * @param id the name of its group
 * @param meaning what it is, in words
 * @param bounds where it is, mm of the drawing
 */
public record Target(String id, String meaning, Bounds bounds) {
}
