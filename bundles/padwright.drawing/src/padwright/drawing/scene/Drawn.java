package padwright.drawing.scene;

/** An outline and how it is drawn. */
public record Drawn(Geometry geometry, Style style) implements Element {

	@Override
	public void accept(ElementVisitor visitor) {
		visitor.visit(this);
	}
}
