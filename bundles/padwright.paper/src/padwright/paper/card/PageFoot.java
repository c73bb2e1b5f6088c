package padwright.paper.card;

import java.util.ArrayList;
import java.util.List;

import padwright.drawing.clock.FilmHatch;
import padwright.drawing.scene.Drawn;
import padwright.drawing.scene.Element;
import padwright.drawing.scene.Face;
import padwright.drawing.scene.Ink;
import padwright.drawing.scene.Rectangle;
import padwright.drawing.scene.Stroke;
import padwright.drawing.scene.Style;
import padwright.drawing.scene.Text;
import padwright.paper.page.Column;
import padwright.paper.page.FootRule;
import padwright.paper.page.Part;
import padwright.engine.length.LengthUnit;
import padwright.paper.words.Messages;
import padwright.workup.words.LengthWords;
import padwright.workup.words.ShownUnit;

/** The foot of each page: how to read the clocks, what to beware of, which page it is. */
final class PageFoot {

	private static final double SIZE = FootRule.SIZE;
	private static final double GUTTER = 4;
	private static final double SWATCH = 2.6;

	private final BenchCard card;
	private final CardStyle style;
	private final double width;

	PageFoot(BenchCard card, CardStyle style, double width) {
		this.card = card;
		this.style = style;
		this.width = width;
	}

	Part of(int page, int pages) {
		Column reading = column(0);
		reading.space(1.2);
		reading.line(Messages.of("card.howToRead"), Face.CONDENSED_BOLD, SIZE, 0);
		howToRead().forEach(text -> reading.paragraph(text, Face.CONDENSED, SIZE));
		reading.space(0.6);
		List<Element> elements = new ArrayList<>(swatches(reading.y()));
		reading.space(SWATCH + 0.8);
		Column cautions = column(width / 2 + GUTTER / 2);
		cautions.space(1.2);
		cautions.line(Messages.of("card.takeCare"), Face.CONDENSED_BOLD, SIZE, 0);
		card.cautions().forEach(text -> caution(cautions, text));
		elements.addAll(reading.elements());
		elements.addAll(cautions.elements());
		double height = Math.max(reading.y() - FootRule.NUMBER_HEIGHT, cautions.y());
		return FootRule.around(elements, height, width, page, pages);
	}

	private Column column(double left) {
		return new Column(style.typesetter(), left, 0, (width - GUTTER) / 2);
	}

	private List<String> howToRead() {
		return List.of(
				Messages.of("card.read.figures", style.twelveLooksAt(), ShownUnit.symbol(),
						ShownUnit.now() == LengthUnit.THOU ? Messages.of("card.read.thou") : ""),
				Messages.of("card.read.clock", LengthWords.withUnit(CardStyle.FULL_GAP)), Messages.of("card.read.level"),
				Messages.of("card.read.empty"));
	}

	private static void caution(Column column, String text) {
		column.add(Text.of("•", column.left(), column.baseline(SIZE), Face.CONDENSED, SIZE));
		column.paragraph(text, Face.CONDENSED, SIZE, SIZE * 0.8, Integer.MAX_VALUE);
	}

	private static String label(FilmHatch hatch) {
		String thickness = LengthWords.figure(hatch.upTo());
		return hatch == FilmHatch.THICKER ? Messages.of("card.filmOver", thickness) : thickness;
	}

	private List<Element> swatches(double top) {
		List<Element> elements = new ArrayList<>();
		double baseline = top + SWATCH * 0.85;
		Text word = Text.of(Messages.of("card.filmUpTo"), 0, baseline, Face.CONDENSED, SIZE);
		elements.add(word);
		double left = style.typesetter().metrics().width(word) + SIZE * 0.6;
		for (FilmHatch hatch : FilmHatch.values()) {
			elements.add(new Drawn(new Rectangle(left, top, SWATCH * 1.6, SWATCH),
					Style.of(hatch.fill(1), Stroke.of(Ink.BLACK, 0.25))));
			Text label = Text.of(label(hatch), left + SWATCH * 1.6 + 0.6, baseline, Face.CONDENSED, SIZE);
			elements.add(label);
			left = label.x() + style.typesetter().metrics().width(label) + SIZE;
		}
		return elements;
	}
}
