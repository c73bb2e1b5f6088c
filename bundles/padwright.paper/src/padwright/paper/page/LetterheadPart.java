package padwright.paper.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import padwright.drawing.scene.Anchor;
import padwright.drawing.scene.Element;
import padwright.drawing.scene.Face;
import padwright.drawing.scene.Group;
import padwright.drawing.scene.Picture;
import padwright.drawing.scene.Transform;

/** Draws a letterhead: the logo on the left and the lines on the right, or the lines on the left where there is no logo. */
final class LetterheadPart {

	private static final double NAME = 4.2;
	private static final double LINE = 3;
	private static final double LEADING = 1.3;
	private static final double LOGO_HEIGHT = 16;
	private static final double BELOW = 3;
	private static final String LOGO = "logo";

	private LetterheadPart() {
	}

	/** Of no height where there is nothing to draw. */
	static Part of(Letterhead letterhead, Typesetter typesetter, double width) {
		List<Element> elements = new ArrayList<>();
		Optional<Picture> logo = letterhead.logo()
				.map(data -> Picture.within(data, 0, 0, width * 0.4, LOGO_HEIGHT));
		logo.ifPresent(picture -> elements.add(new Group(Optional.empty(), Optional.of(LOGO), Transform.NONE, List.of(picture))));
		double top = 0;
		for (int line = 0; line < letterhead.lines().size(); line++) {
			double size = line == 0 ? NAME : LINE;
			Face face = line == 0 ? Face.BOLD : Face.REGULAR;
			elements.add(typesetter.line(letterhead.lines().get(line), logo.isPresent() ? width : 0, top + size * 0.9, face, size,
					width * 0.55).anchored(logo.isPresent() ? Anchor.END : Anchor.START));
			top += size * LEADING;
		}
		double height = Math.max(top, logo.map(picture -> picture.bounds().height()).orElse(0.0));
		return new FixedPart(height == 0 ? 0 : height + BELOW, elements);
	}
}
