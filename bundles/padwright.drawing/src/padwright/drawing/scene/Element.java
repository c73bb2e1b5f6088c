package padwright.drawing.scene;

/** One thing of a scene; later ones cover earlier ones. */
public sealed interface Element permits Drawn, Text, Picture, Group {

	void accept(ElementVisitor visitor);
}
