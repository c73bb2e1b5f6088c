package padwright.views.hole;

import java.util.Locale;
import java.util.Optional;

import padwright.language.edit.PartSize;
import padwright.views.Messages;

/** A size that the section through a hole shows, and that can be dragged in it. */
public enum HoleSize {
	/** Inside width of the tube under the hole. */
	BORE("19"),
	/** Inside. */
	HOLE("13"), RIM("1"),
	/** From the bore to the rim. */
	CHIMNEY("2.5"),
	/** Inside. */
	CUP("16.5"),
	/** From the lip of the cup to its floor. */
	DEPTH("3"),
	/** How far the middle of the pad is lifted. */
	RISE("2.5"),
	/** From the axis of the rod to the middle of the cup. */
	ARM("12");

	private static final String GROUP = "size:";

	private final String usual;

	HoleSize(String usual) {
		this.usual = usual;
	}

	/** Names it in the drawing. */
	public String id() {
		return GROUP + name();
	}

	/** That of an id; nothing for other ids. */
	public static Optional<HoleSize> of(String id) {
		return id.startsWith(GROUP) ? Optional.of(valueOf(id.substring(GROUP.length()))) : Optional.empty();
	}

	/** What it is drawn as where it is not known: a flute's (invented), mm. */
	String usual() {
		return usual;
	}

	/** What the language calls it; the bore is none of a hole. */
	PartSize part() {
		return PartSize.valueOf(name());
	}

	public String inWords() {
		return Messages.of("hole.size." + name().toLowerCase(Locale.ROOT));
	}

	/**
	 * What it grows by when its mark is dragged, mm; widths on either side of the middle grow twice.
	 *
	 * @param side of the middle on which it was taken hold of, 1 for right and −1 for left
	 * @param hinge side on which the rod is
	 */
	double growth(double dx, double dy, int side, int hinge) {
		return switch (this) {
		case BORE, HOLE, CUP -> 2 * side * dx;
		case RIM -> -hinge * dx;
		case CHIMNEY, DEPTH, RISE -> -dy;
		case ARM -> hinge * dx;
		};
	}
}
