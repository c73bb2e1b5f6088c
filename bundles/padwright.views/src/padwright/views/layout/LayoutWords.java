package padwright.views.layout;

import padwright.engine.length.Length;
import padwright.language.edit.SystemWords;
import padwright.views.Figures;
import padwright.views.Messages;
import padwright.workup.words.Texts;

/** What a layout says. */
final class LayoutWords {

	private LayoutWords() {
	}

	/** As in {@code 186.5 mm on body, 20°}. */
	static String place(Layout layout, LayoutItem item) {
		return item.along().map(along -> {
			LayoutJoint joint = layout.jointAt(along);
			Length at = along.minus(joint.start());
			String angle = Texts.decimal(SystemWords.number(item.around()));
			return joint.label().isEmpty() ? Messages.of("layout.place", Figures.millimetres(at), angle)
					: Messages.of("layout.placeOn", Figures.millimetres(at), joint.label(), angle);
		}).orElseGet(() -> Messages.of("layout.unplaced"));
	}

	/** Why the anchor stays where it is, behind a comma; empty where no neighbour speaks for it. */
	static String reason(LayoutDrag.Way way) {
		return way.along() == Snap.Reason.EQUAL ? ", " + Messages.of("layout.equal")
				: way.along() == Snap.Reason.NEIGHBOUR ? ", " + Messages.of("layout.level") : "";
	}

	/** For a screen reader, and over the thing itself. */
	static String detail(Layout layout, LayoutItem item) {
		String size = item.hole().map(hole -> "\n" + Messages.of("layout.hole", Figures.millimetres(hole))).orElse("");
		return Messages.of("layout.item", item.kind().inWords(), item.label(), place(layout, item),
				item.origin().inWords()) + size;
	}
}
