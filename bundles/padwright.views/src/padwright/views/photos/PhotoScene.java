package padwright.views.photos;

import java.util.ArrayList;
import java.util.List;

import padwright.drawing.font.DejaVuMetrics;
import padwright.drawing.scene.Drawn;
import padwright.drawing.scene.Element;
import padwright.drawing.scene.Face;
import padwright.drawing.scene.Group;
import padwright.drawing.scene.Picture;
import padwright.drawing.scene.Rectangle;
import padwright.drawing.scene.Scene;
import padwright.drawing.scene.Style;
import padwright.drawing.scene.Text;
import padwright.paper.page.Typesetter;
import padwright.views.Messages;
import padwright.views.Palette;

/** Draws photographs in rows, each with its words below; an empty frame with the reason for one that is not there. */
public final class PhotoScene {

	private static final double WIDE = 48;
	private static final double HIGH = 36;
	private static final double GAP = 4;
	private static final double INSET = 2;
	private static final double TEXT = 3;
	private static final double LEADING = 1.25;
	private static final int LINES = 3;
	private static final double CELL = HIGH + LINES * TEXT * LEADING + GAP;

	private final Palette palette;
	private final Typesetter typesetter = new Typesetter(new DejaVuMetrics());

	private PhotoScene(Palette palette) {
		this.palette = palette;
	}

	/** @param aspect width of the window over its height */
	public static Scene draw(List<Photo> photos, Palette palette, double aspect) {
		return new PhotoScene(palette).scene(photos, aspect);
	}

	private Scene scene(List<Photo> photos, double aspect) {
		if (photos.isEmpty()) {
			return new Scene(Messages.of("photos.name"), 120, 120 / aspect, List.of(Text.centred(Messages.of("photos.none"), 60,
					60 / aspect, Face.REGULAR, 4).in(palette.quiet())));
		}
		int columns = columns(photos.size(), aspect);
		List<Element> elements = new ArrayList<>();
		for (int index = 0; index < photos.size(); index++) {
			elements.add(photo(photos.get(index), GAP + index % columns * (WIDE + GAP), GAP + index / columns * CELL));
		}
		int rows = (photos.size() + columns - 1) / columns;
		return new Scene(Messages.of("photos.name"), GAP + columns * (WIDE + GAP), GAP + rows * CELL, elements);
	}

	/** As many as show them largest. */
	private static int columns(int count, double aspect) {
		int best = 1;
		for (int columns = 1; columns <= count; columns++) {
			if (room(columns, count, aspect) < room(best, count, aspect)) {
				best = columns;
			}
		}
		return best;
	}

	private static double room(int columns, int count, double aspect) {
		int rows = (count + columns - 1) / columns;
		return Math.max(GAP + columns * (WIDE + GAP), (GAP + rows * CELL) * aspect);
	}

	private Group photo(Photo photo, double left, double top) {
		List<Element> elements = new ArrayList<>();
		photo.small().ifPresentOrElse(picture -> {
			Picture fitted = Picture.within(picture, 0, 0, WIDE, HIGH);
			elements.add(Picture.within(picture, (WIDE - fitted.bounds().width()) / 2, (HIGH - fitted.bounds().height()) / 2,
					WIDE, HIGH));
		}, () -> {
			elements.add(new Drawn(new Rectangle(0, 0, WIDE, HIGH), Style.stroked(palette.quiet(), 0.3)));
			lines(photo.trouble(), INSET, HIGH / 2 - TEXT, Face.REGULAR, 4, elements);
		});
		lines(photo.words().isEmpty() ? photo.path() : photo.words(), 0, HIGH + 0.5, Face.CONDENSED, LINES, elements);
		return Group.named(photo.id(), spoken(photo), elements).at(left, top);
	}

	private void lines(String words, double left, double top, Face face, int most, List<Element> elements) {
		double y = top;
		for (String line : typesetter.wrap(words, face, TEXT, WIDE - 2 * left, most)) {
			y += TEXT * LEADING;
			elements.add(Text.of(line, left, y, face, TEXT).in(palette.ink()));
		}
	}

	private static String spoken(Photo photo) {
		List<String> words = new ArrayList<>(List.of(photo.words(), photo.path(), photo.trouble()));
		words.removeIf(String::isEmpty);
		return String.join(". ", words);
	}
}
