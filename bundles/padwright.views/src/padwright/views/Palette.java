package padwright.views;

import padwright.drawing.scene.Ink;

/**
 * The colours of one theme. Drawings made for paper follow it too: their greys run from {@code ink} to {@code ground}.
 *
 * @param ground what everything lies on
 * @param ink lines and text
 * @param quiet lines and text of less weight
 * @param unread a key that waits to be read
 * @param read a key that is read and waits for an answer
 * @param solved a key whose answer is noted
 * @param done a key that needs no more
 * @param warning something to look at
 * @param error something wrong
 * @param accent what is selected or has the focus
 * @param proposal what is proposed, but not written
 */
public record Palette(Ink ground, Ink ink, Ink quiet, Ink unread, Ink read, Ink solved, Ink done, Ink warning,
		Ink error, Ink accent, Ink proposal) {

	private static final Palette LIGHT = new Palette(new Ink(252, 251, 248), new Ink(35, 38, 46),
			new Ink(105, 109, 118), new Ink(98, 102, 112), new Ink(31, 103, 166), new Ink(112, 72, 160),
			new Ink(27, 117, 76), new Ink(158, 96, 0), new Ink(190, 36, 46), new Ink(0, 105, 148),
			new Ink(148, 50, 128));
	private static final Palette DARK = new Palette(new Ink(34, 37, 43), new Ink(226, 228, 232),
			new Ink(152, 158, 168), new Ink(150, 156, 166), new Ink(105, 172, 232), new Ink(182, 148, 228),
			new Ink(102, 198, 148), new Ink(236, 178, 74), new Ink(244, 122, 122), new Ink(90, 196, 236),
			new Ink(232, 140, 210));

	/** Black on white, with the colours of the light theme, for what will be printed. */
	public static Palette paper() {
		return new Palette(new Ink(255, 255, 255), new Ink(0, 0, 0), LIGHT.quiet, LIGHT.unread, LIGHT.read, LIGHT.solved,
				LIGHT.done, LIGHT.warning, LIGHT.error, LIGHT.accent, LIGHT.proposal);
	}

	/** Dark on light. */
	public static Palette light() {
		return LIGHT;
	}

	/** Light on dark. */
	public static Palette dark() {
		return DARK;
	}

	/** What an ink of a drawing looks like here: greys between ink and ground, colours as they are. */
	public Ink shown(Ink drawn) {
		boolean grey = drawn.red() == drawn.green() && drawn.green() == drawn.blue();
		return grey ? mixed(ink, ground, drawn.red() / 255.0) : drawn;
	}

	/** A colour thinned with the ground: 0 is the ground, 1 the colour itself. */
	public Ink tint(Ink colour, double strength) {
		return mixed(ground, colour, strength);
	}

	/** On another ground: for a drawing that is one field among others. */
	public Palette on(Ink other) {
		return new Palette(other, ink, quiet, unread, read, solved, done, warning, error, accent, proposal);
	}

	/** Without colours: for the last good drawing of a text that cannot be read now. */
	public Palette greyed() {
		Ink grey = tint(quiet, 0.6);
		return new Palette(ground, grey, grey, grey, grey, grey, grey, grey, grey, grey, grey);
	}

	/** Ink and ground are told apart by their contrast, so that a theme need not say which it is. */
	public boolean isDark() {
		return brightness(ground) < brightness(ink);
	}

	private static int brightness(Ink colour) {
		return colour.red() + colour.green() + colour.blue();
	}

	private static Ink mixed(Ink from, Ink to, double share) {
		return new Ink(mixed(from.red(), to.red(), share), mixed(from.green(), to.green(), share),
				mixed(from.blue(), to.blue(), share));
	}

	private static int mixed(int from, int to, double share) {
		return (int) Math.round(from + (to - from) * share);
	}
}
