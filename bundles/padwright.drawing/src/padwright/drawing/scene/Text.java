package padwright.drawing.scene;

/**
 * One line of upright text.
 *
 * @param text what it says; control characters and broken surrogates become a space
 * @param x where it is anchored, mm
 * @param baseline y of the baseline, mm
 * @param face the face
 * @param size of the em, mm, more than 0
 * @param anchor which point of the baseline lies at {@code x}
 * @param ink its colour
 */
public record Text(String text, double x, double baseline, Face face, double size, Anchor anchor, Ink ink)
		implements Element {

	/** @throws IllegalArgumentException if the size is not positive */
	public Text {
		if (!(size > 0)) {
			throw new IllegalArgumentException("text cannot be " + size + " mm high");
		}
		text = text.codePoints().map(Text::printable)
				.collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append).toString();
	}

	/** Black text that begins at {@code x}. */
	public static Text of(String text, double x, double baseline, Face face, double size) {
		return new Text(text, x, baseline, face, size, Anchor.START, Ink.BLACK);
	}

	/** Black text whose capitals and figures have their middle at {@code (x, y)}. */
	public static Text centred(String text, double x, double y, Face face, double size) {
		return new Text(text, x, y + FontMetrics.CAPITAL_HEIGHT / 2 * size, face, size, Anchor.MIDDLE, Ink.BLACK);
	}

	/** This text anchored otherwise. */
	public Text anchored(Anchor other) {
		return new Text(text, x, baseline, face, size, other, ink);
	}

	/** This text in another colour. */
	public Text in(Ink other) {
		return new Text(text, x, baseline, face, size, anchor, other);
	}

	private static int printable(int codePoint) {
		boolean unprintable = switch (Character.getType(codePoint)) {
			case Character.CONTROL, Character.SURROGATE, Character.UNASSIGNED -> true;
			default -> false;
		};
		return unprintable ? ' ' : codePoint;
	}

	@Override
	public void accept(ElementVisitor visitor) {
		visitor.visit(this);
	}
}
