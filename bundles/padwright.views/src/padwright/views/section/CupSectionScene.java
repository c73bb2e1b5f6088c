package padwright.views.section;

import java.util.ArrayList;
import java.util.List;

import padwright.drawing.scene.Bounds;
import padwright.drawing.scene.Element;
import padwright.drawing.scene.Face;
import padwright.drawing.scene.Group;
import padwright.drawing.scene.Scene;
import padwright.drawing.scene.Text;
import padwright.views.Messages;
import padwright.views.Palette;
import padwright.views.scenes.Extent;

/** A cup cut open, with the sum of its shims beside it, or below it in a narrow window. */
public final class CupSectionScene {

	private static final double MARGIN = 1.4;
	private static final double BETWEEN = 3;

	private CupSectionScene() {
	}

	/**
	 * The section.
	 *
	 * @param exaggeration how many times higher than wide it is drawn, 1 for true to scale
	 * @param aspect width of the window over its height
	 */
	public static Scene draw(CupSectionState state, Palette palette, double exaggeration, double aspect) {
		if (state.key().isEmpty()) {
			return new Scene("", 40 * aspect, 40, List.of(Text
					.centred(Messages.of("choose.key"), 20 * aspect, 20, Face.REGULAR, 1.6).in(palette.quiet())));
		}
		Group cup = Group.of(new CutCup(state, palette, exaggeration).draw());
		Bounds cupRoom = Extent.of(List.of(cup)).orElseThrow();
		Group sum = Group.of(new HeightSum(state, palette).draw());
		Bounds sumRoom = Extent.of(List.of(sum)).orElseThrow();
		double wide = cupRoom.width() + BETWEEN + sumRoom.width();
		double high = cupRoom.height() + BETWEEN + sumRoom.height();
		boolean beside = Math.max(wide / aspect, Math.max(cupRoom.height(), sumRoom.height()))
				< Math.max(Math.max(cupRoom.width(), sumRoom.width()) / aspect, high);
		List<Element> placed = new ArrayList<>();
		placed.add(cup.at(MARGIN - cupRoom.left(), MARGIN - cupRoom.top()));
		placed.add(sum.at(MARGIN - sumRoom.left() + (beside ? cupRoom.width() + BETWEEN : 0),
				MARGIN - sumRoom.top() + (beside ? 0 : cupRoom.height() + BETWEEN)));
		Bounds all = Extent.of(placed).orElseThrow();
		return new Scene(Messages.of("section.title", state.label()), all.right() + MARGIN, all.bottom() + MARGIN,
				placed);
	}
}
