package padwright.paper.page;

/** Sheets that a card is laid out for, upright. */
public enum PaperSize {
	A4(210, 297), LETTER(215.9, 279.4);

	private final double width;
	private final double height;

	PaperSize(double width, double height) {
		this.width = width;
		this.height = height;
	}

	/** In mm. */
	public double width() {
		return width;
	}

	/** In mm. */
	public double height() {
		return height;
	}
}
