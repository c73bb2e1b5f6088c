package padwright.drawing.scene;

/** How much room text takes. One implementation serves every output, so that all are laid out alike. */
public interface FontMetrics {

	/** Height of a capital or figure over the em, alike in all faces. */
	double CAPITAL_HEIGHT = 0.729;

	/** Advance width in mm of one line of text at an em of {@code size} mm, without kerning or ligatures. */
	double width(String text, Face face, double size);

	/** Whether the face has a glyph of its own for the character. */
	boolean hasGlyph(int codePoint, Face face);

	/** Advance width in mm of a text element. */
	default double width(Text text) {
		return width(text.text(), text.face(), text.size());
	}
}
