package padwright.drawing.scene;

/** The faces that drawings are set in. */
public enum Face {
	REGULAR(false, false), BOLD(true, false), CONDENSED(false, true), CONDENSED_BOLD(true, true);

	private final boolean bold;
	private final boolean condensed;

	Face(boolean bold, boolean condensed) {
		this.bold = bold;
		this.condensed = condensed;
	}

	public boolean isBold() {
		return bold;
	}

	public boolean isCondensed() {
		return condensed;
	}
}
