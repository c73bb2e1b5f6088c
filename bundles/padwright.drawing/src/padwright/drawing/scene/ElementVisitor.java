package padwright.drawing.scene;

/** Whatever treats each kind of element in its own way: a renderer, a search. */
public interface ElementVisitor {

	void visit(Drawn drawn);

	void visit(Text text);

	void visit(Picture picture);

	void visit(Group group);
}
