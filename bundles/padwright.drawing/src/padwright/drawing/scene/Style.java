package padwright.drawing.scene;

import java.util.Optional;

/** How an outline is drawn: filled first, then stroked. */
public record Style(Optional<Fill> fill, Optional<Stroke> stroke) {

	public static Style stroked(Ink ink, double width) {
		return stroked(Stroke.of(ink, width));
	}

	public static Style stroked(Stroke stroke) {
		return new Style(Optional.empty(), Optional.of(stroke));
	}

	public static Style filled(Ink ink) {
		return new Style(Optional.of(new SolidFill(ink)), Optional.empty());
	}

	public static Style of(Fill fill, Stroke stroke) {
		return new Style(Optional.of(fill), Optional.of(stroke));
	}
}
