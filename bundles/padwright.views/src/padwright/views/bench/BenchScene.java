package padwright.views.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import padwright.drawing.scene.Anchor;
import padwright.drawing.scene.Drawn;
import padwright.drawing.scene.Element;
import padwright.drawing.scene.Face;
import padwright.drawing.scene.Group;
import padwright.drawing.scene.Ink;
import padwright.drawing.scene.Rectangle;
import padwright.drawing.scene.Scene;
import padwright.drawing.scene.SolidFill;
import padwright.drawing.scene.Stroke;
import padwright.drawing.scene.Style;
import padwright.drawing.scene.Text;
import padwright.views.Messages;
import padwright.views.Palette;
import padwright.views.bench.BenchPicture.Cell;
import padwright.views.bench.BenchPicture.Known;
import padwright.views.bench.BenchPicture.Push;

/** Bench mode as a drawing, in millimetres of the display, for eyes that are an arm and a half away. */
final class BenchScene {

	/** What a finger hits. */
	static final double TOUCH = 15;
	private static final double GAP = 2.5;
	private static final double ROUND_LINE = 0.5;
	private static final double THICK_LINE = 1.4;
	/** Readings in one row; more go into a second one. */
	private static final int IN_A_ROW = 8;

	private final BenchPicture picture;
	private final Palette palette;
	private final double width;
	private final double height;
	private final double touch;
	private final List<Element> elements = new ArrayList<>();

	private BenchScene(BenchPicture picture, Palette palette, double width, double height) {
		this.picture = picture;
		this.palette = palette;
		this.width = width;
		this.height = height;
		this.touch = Math.max(TOUCH, height * 0.09);
	}

	/**
	 * The drawing.
	 *
	 * @param width of the window in mm of the display
	 * @param height likewise
	 */
	static Scene draw(BenchPicture picture, Palette palette, double width, double height) {
		BenchScene scene = new BenchScene(picture, palette, width, height);
		scene.draw();
		return new Scene(picture.label(), width, height, scene.elements);
	}

	private void draw() {
		double buttons = height - 2 * (touch + GAP);
		double room = buttons - GAP;
		head(room * 0.24);
		cells(room * 0.26, room * 0.34);
		answer(room * 0.63, room * 0.37);
		row(picture.readingButtons(), buttons);
		row(picture.workButtons(), buttons + touch + GAP);
	}

	private void head(double tall) {
		double size = tall * 0.86;
		double base = tall * 0.85;
		FittedText key = FittedText.line(picture.label(), Face.BOLD, size, width * 0.4);
		text(key.lines().get(0), GAP, base, Face.BOLD, key.size(), palette.ink(), Anchor.START);
		double from = GAP + FittedText.width(picture.label(), Face.BOLD, key.size()) + 3 * GAP;
		double clock = FittedText.width(picture.time(), Face.BOLD, size * 0.8);
		text(picture.time(), width - GAP, base, Face.BOLD, size * 0.8,
				picture.running() ? palette.ink() : palette.warning(), Anchor.END);
		double left = width - clock - 4 * GAP - from;
		if (left > 0) {
			String words = Stream.of(picture.place(), picture.running() ? "" : Messages.of("bench.paused"), picture.indicator())
					.filter(said -> !said.isEmpty()).collect(Collectors.joining(", "));
			lines(FittedText.of(words, Face.REGULAR, size * 0.34, left, tall), from, tall * 0.2, palette.quiet());
		}
	}

	private void cells(double top, double tall) {
		int count = picture.cells().size();
		if (count == 0) {
			return;
		}
		int rows = (count + IN_A_ROW - 1) / IN_A_ROW;
		int inRow = (count + rows - 1) / rows;
		double wide = (width - GAP) / inRow;
		double high = tall / rows;
		for (int index = 0; index < count; index++) {
			cell(picture.cells().get(index), GAP + index % inRow * wide, top + index / inRow * high, wide - GAP,
					high - GAP);
		}
	}

	private void cell(Cell cell, double left, double top, double wide, double tall) {
		Ink ink = cell.known() == Known.SLIDES ? palette.error() : palette.done();
		Ink fill = cell.current() ? palette.tint(palette.accent(), 0.22)
				: cell.doubtful() ? palette.tint(palette.warning(), 0.3) : palette.ground();
		List<Element> parts = new ArrayList<>();
		parts.add(new Drawn(new Rectangle(left, top, wide, tall),
				Style.of(new SolidFill(fill), Stroke.of(cell.current() ? palette.accent() : palette.quiet(),
						cell.current() ? THICK_LINE : ROUND_LINE))));
		double hour = tall * 0.24;
		parts.add(Text.of(cell.hour().toString(), left + wide / 2, top + hour * 1.05, Face.REGULAR, hour)
				.anchored(Anchor.MIDDLE).in(cell.current() ? palette.accent() : palette.quiet()));
		if (!cell.text().isEmpty()) {
			FittedText figure = FittedText.line(cell.text(), Face.BOLD, tall * 0.62, wide * 0.92);
			parts.add(Text.centred(cell.text(), left + wide / 2, top + tall * 0.64, Face.BOLD, figure.size())
					.in(cell.current() && cell.known() != Known.SLIDES && cell.known() != Known.DRAGS ? palette.ink() : ink));
		}
		elements.add(Group.named(BenchPicture.HOUR + cell.hour(), Messages.of("bench.hour", cell.hour(), cell.text()), parts));
	}

	private void answer(double top, double tall) {
		boolean hasChances = !picture.chances().isEmpty();
		FittedText work = FittedText.of(picture.toDo(), Face.BOLD, tall * 0.34, width - 2 * GAP,
				tall * (hasChances ? 0.4 : 0.6));
		lines(work, GAP, top, palette.ink());
		double y = top + work.height();
		for (String chance : picture.chances()) {
			FittedText line = FittedText.line(chance, Face.REGULAR, tall * 0.2, width - 2 * GAP);
			lines(line, GAP, y, palette.ink());
			y += line.height();
		}
		double left = top + tall - y;
		if (!picture.note().isEmpty() && left > 2) {
			lines(FittedText.of(picture.note(), Face.REGULAR, tall * 0.15, width - 2 * GAP, left), GAP, y,
					palette.quiet());
		}
	}

	private void row(List<Push> buttons, double top) {
		double wide = (width - GAP) / buttons.size();
		for (int index = 0; index < buttons.size(); index++) {
			button(buttons.get(index), GAP + index * wide, top, wide - GAP);
		}
	}

	private void button(Push push, double left, double top, double wide) {
		Ink ink = push.enabled() ? palette.ink() : palette.tint(palette.quiet(), 0.55);
		Ink fill = push.offered() ? palette.tint(palette.accent(), 0.35)
				: palette.tint(palette.quiet(), push.enabled() ? 0.2 : 0.06);
		List<Element> parts = new ArrayList<>();
		parts.add(new Drawn(new Rectangle(left, top, wide, touch),
				Style.of(new SolidFill(fill), Stroke.of(push.offered() ? palette.accent() : palette.quiet(), ROUND_LINE))));
		FittedText key = FittedText.line(push.key(), Face.REGULAR, touch * 0.3, wide * 0.9);
		FittedText name = FittedText.of(push.text(), Face.BOLD, touch * 0.42, wide * 0.92, touch * 0.6);
		double y = top + touch * 0.04 + (touch * 0.6 - name.height()) / 2;
		for (String line : name.lines()) {
			y += name.size() * FittedText.LINE;
			parts.add(Text.of(line, left + wide / 2, y - name.size() * 0.3, name.face(), name.size())
					.anchored(Anchor.MIDDLE).in(ink));
		}
		if (!push.key().isEmpty()) {
			parts.add(Text.of(push.key(), left + wide / 2, top + touch * 0.92, Face.REGULAR, key.size())
					.anchored(Anchor.MIDDLE).in(push.enabled() ? palette.quiet() : ink));
		}
		elements.add(Group.named(push.id(), push.text(), parts));
	}

	private void lines(FittedText text, double left, double top, Ink ink) {
		double y = top;
		for (String line : text.lines()) {
			y += text.size() * FittedText.LINE;
			text(line, left, y - text.size() * 0.25, text.face(), text.size(), ink, Anchor.START);
		}
	}

	private void text(String words, double x, double base, Face face, double size, Ink ink, Anchor anchor) {
		if (!words.isEmpty()) {
			elements.add(Text.of(words, x, base, face, size).anchored(anchor).in(ink));
		}
	}
}
