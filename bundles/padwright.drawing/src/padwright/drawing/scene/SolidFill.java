package padwright.drawing.scene;

/** One colour all over. */
public record SolidFill(Ink ink) implements Fill {
}
