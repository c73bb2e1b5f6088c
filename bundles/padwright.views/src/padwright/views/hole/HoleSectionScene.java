package padwright.views.hole;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

import padwright.drawing.scene.Element;
import padwright.drawing.scene.Face;
import padwright.drawing.scene.Group;
import padwright.drawing.scene.Scene;
import padwright.drawing.scene.Text;
import padwright.engine.length.Length;
import padwright.language.edit.SystemWords;
import padwright.views.Figures;
import padwright.views.Messages;
import padwright.views.Palette;
import padwright.views.layout.LayoutItem;
import padwright.views.layout.LayoutJoint;
import padwright.workup.words.Texts;

/** The tube cut across through a hole, life-size in mm. Each size is a named group. */
public final class HoleSectionScene {

	private static final double TITLE = 2.4;
	private static final double MARGIN = 1.5;

	private HoleSectionScene() {
	}

	/** What is being done, drawn; or a word where there is nothing to draw. */
	public static Scene draw(HoleSectionEditing editing, Palette palette) {
		return editing.section().map(section -> scene(section, editing, palette)).orElseGet(() -> nothing(palette));
	}

	private static Scene nothing(Palette palette) {
		return new Scene(Messages.of("hole.name"), 80, 40, List.of(
				Text.centred(Messages.of("hole.empty"), 40, 20, Face.REGULAR, 2).in(palette.quiet())));
	}

	private static Scene scene(HoleSection section, HoleSectionEditing editing, Palette theme) {
		HoleFrame frame = HoleFrame.of(editing.still().orElseThrow());
		Palette palette = editing.layout().fault().isPresent() ? theme.greyed() : theme;
		List<Element> elements = new ArrayList<>(new CutHole(section, palette).draw());
		Optional<HoleSize> dragged = editing.dragged();
		section.sizes().keySet().stream().sorted(Comparator.reverseOrder()).forEach(size -> elements
				.add(new SizeMark(section, size, dragged.filter(size::equals).isPresent(), palette).draw()));
		Group drawn = Group.of(elements).at(-frame.left(), -frame.top());
		Text title = Text.of(title(section), MARGIN, MARGIN + TITLE, Face.BOLD, TITLE).in(palette.ink());
		Text where = Text.of(where(section), MARGIN, MARGIN + 2.3 * TITLE, Face.CONDENSED, TITLE * 0.8)
				.in(palette.quiet());
		return new Scene(title(section), frame.width(), frame.height(), List.of(drawn, title, where));
	}

	private static String title(HoleSection section) {
		return Messages.of("hole.title", section.item().label());
	}

	/** As in {@code 186.5 mm on body, 20°, on Main rod, inherited}. */
	private static String where(HoleSection section) {
		LayoutItem item = section.item();
		Length along = item.along().orElseThrow();
		LayoutJoint joint = section.layout().jointAt(along);
		String at = Figures.millimetres(along.minus(joint.start()));
		String angle = Texts.decimal(SystemWords.number(item.around()));
		String place = joint.label().isEmpty() ? Messages.of("layout.place", at, angle)
				: Messages.of("layout.placeOn", at, joint.label(), angle);
		return place + ", " + item.origin().inWords();
	}

	/** The x of the middle of the hole in the drawing. */
	static double middle(HoleSection section) {
		return -HoleFrame.of(section).left();
	}
}
