package padwright.drawing.scene;

/** What covers the inside of an outline (even-odd rule: a hole is an outline within an outline). */
public sealed interface Fill permits SolidFill, Hatch {
}
