package padwright.paper.card;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import padwright.drawing.clock.FilmHatch;
import padwright.drawing.clock.DialWords;
import padwright.drawing.clock.RimClock;
import padwright.drawing.scene.Anchor;
import padwright.drawing.scene.Drawn;
import padwright.drawing.scene.Element;
import padwright.drawing.scene.Face;
import padwright.drawing.scene.Group;
import padwright.drawing.scene.Ink;
import padwright.drawing.scene.Line;
import padwright.drawing.scene.Rectangle;
import padwright.drawing.scene.Stroke;
import padwright.drawing.scene.Style;
import padwright.drawing.scene.Text;
import padwright.engine.clock.ClockHour;
import padwright.engine.film.PartialShim;
import padwright.paper.page.Column;
import padwright.paper.page.TickBoxes;
import padwright.paper.page.Typesetter;
import padwright.paper.words.ClockMeanings;
import padwright.paper.words.Messages;
import padwright.workup.words.LengthWords;
import padwright.workup.words.PieceWords;

/** Lays out the cell of one key: what to do on the left, the clock on the right, boxes to tick below. */
final class KeyCell {

	private static final int MOST_NOTES = 4;
	/** In mm, eight gaps or three shims and their sum take a second line. */
	private static final int MOST_FIGURE_LINES = 2;
	/** How much room above and below the clock together keeps it beside the head of its cell. */
	private static final double MOST_LOWERED = 8;
	private static final int MOST_NOTE_LINES = 5;

	private final CardStyle style;
	private final Typesetter typesetter;
	private final CardKey key;
	private final int number;
	private final Column column;

	private KeyCell(CardStyle style, CardKey key, int number) {
		this.style = style;
		this.typesetter = style.typesetter();
		this.key = key;
		this.number = number;
		double textWidth = style.cellWidth() - style.clock() - 3 * style.padding();
		this.column = new Column(typesetter, style.padding(), style.padding(), textWidth);
	}

	/** @param number its place in the order of work, from 1 */
	static KeyCell of(CardStyle style, CardKey key, int number) {
		KeyCell cell = new KeyCell(style, key, number);
		cell.heading();
		cell.fit();
		cell.height();
		cell.work();
		cell.level();
		cell.notes();
		return cell;
	}

	/** As high as it must be. */
	double leastHeight() {
		double text = column.y() + style.tick() + 1.5 * style.padding();
		return Math.max(text, style.padding() + style.clock() + writingHeight());
	}

	private Map<String, Boolean> steps() {
		Map<String, Boolean> steps = new LinkedHashMap<>();
		key.steps().forEach(step -> steps.put(step.word(), key.done().contains(step)));
		return steps;
	}

	/** The cell, with its boxes to tick at the foot of {@code height}. */
	List<Element> draw(double height) {
		List<Element> elements = new ArrayList<>(column.elements());
		elements.addAll(TickBoxes.row(typesetter.metrics(), steps(), style.padding(),
				height - style.tick() - style.padding(), style.tick(), style.small()));
		double clockLeft = style.cellWidth() - style.padding() - style.clock();
		double spare = Math.min(MOST_LOWERED, height - style.padding() - style.clock() - writingHeight());
		elements.add(Group.named("clock " + key.name(), ClockDescription.of(key),
				List.of(clock().draw(style.clock(), typesetter.metrics())))
				.at(clockLeft + style.clock() / 2, style.padding() + spare / 2 + style.clock() / 2));
		elements.addAll(feltAfter(clockLeft, height - style.padding()));
		return elements;
	}

	private double writingHeight() {
		return style.small() * 1.6 + style.padding();
	}

	/** Room to write the readings as delivered. */
	private List<Element> feltAfter(double left, double baseline) {
		Text words = Text.of(Messages.of("card.feltAfter"), left, baseline, Face.CONDENSED, style.small());
		double lineLeft = left + typesetter.metrics().width(words) + style.small() * 0.4;
		return List.of(words, rule(lineLeft, left + style.clock(), baseline));
	}

	private static Element rule(double left, double right, double y) {
		return new Drawn(new Line(left, y, right, y), Style.stroked(Ink.BLACK, 0.15));
	}

	private RimClock clock() {
		return new RimClock(new DialWords(Messages.of("card.twelve", style.twelveLooksAt()), Messages.of("card.side"),
				new ClockMeanings()), new ClockHour(0), key.readings(), key.gap(), key.earlierPieces(),
				key.pieces(), CardStyle.FULL_GAP.inThou());
	}

	private void heading() {
		double size = style.label();
		String place = number + ".";
		double indent = typesetter.metrics().width(place, Face.CONDENSED, style.small()) + style.small() * 0.5;
		double baseline = column.y() + size * 0.78;
		column.add(Text.of(place, column.left(), baseline, Face.CONDENSED, style.small()));
		Text label = typesetter.line(key.label(), column.left() + indent, baseline, Face.BOLD, size,
				column.width() - indent);
		column.add(label);
		besideLabel(indent + typesetter.metrics().width(label) + style.small(), baseline);
		column.space(size * 1.02);
	}

	private void besideLabel(double indent, double baseline) {
		List<String> words = new ArrayList<>();
		if (!key.name().equals(key.label())) {
			words.add(key.name());
		}
		if (!key.closes().isEmpty()) {
			words.add(Messages.of("card.closes", String.join(", ", key.closes())));
		}
		if (!key.found().isEmpty()) {
			words.add(key.found());
		}
		double room = column.width() - indent;
		if (!words.isEmpty() && room > style.small() * 3) {
			column.add(typesetter.line(String.join(" · ", words), column.left() + indent, baseline, Face.CONDENSED,
					style.small(), room));
		}
	}

	private void fit() {
		if (!key.fitText().isEmpty()) {
			column.paragraph(key.fitText(), Face.CONDENSED, style.small(), 0, 2);
		}
		if (!key.emptyText().isEmpty()) {
			figures(Messages.of("card.emptyCup", key.emptyText()), 0);
		}
	}

	private void figures(String figures, double indent) {
		column.figures(figures, Face.CONDENSED, style.small(), indent, MOST_FIGURE_LINES);
	}

	private void height() {
		column.space(style.small() * 0.3);
		if (key.height().isEmpty()) {
			blank(Messages.of("card.fullShims"));
			return;
		}
		CardHeight height = key.height().get();
		labelled(Messages.of("card.fullShims"), height.words());
		height.target().ifPresent(target -> figures(Messages.of("card.target", LengthWords.figure(target),
				LengthWords.signed(height.error().orElseThrow())), style.tab()));
		if (!height.tolerance().isEmpty()) {
			figures(Messages.of("card.padAndDisc", height.tolerance()), style.tab());
		}
	}

	private void labelled(String label, String figures) {
		word(label, style.figure());
		column.figures(figures, Face.CONDENSED_BOLD, style.figure(), style.tab(), MOST_FIGURE_LINES);
	}

	private void blank(String label) {
		word(label, style.figure());
		column.add(rule(column.left() + style.tab(), column.left() + column.width(), column.baseline(style.figure())));
		column.space(style.figure() * 1.16);
	}

	/** What the line to come is about, on its baseline. */
	private void word(String word, double sizeOfLine) {
		column.add(Text.of(word, column.left(), column.baseline(sizeOfLine), Face.CONDENSED, style.small()));
	}

	private void work() {
		for (PartialShim piece : key.earlierPieces()) {
			boolean out = key.work().filter(work -> work.takeOut().contains(piece)).isPresent();
			column.line(Messages.of(out ? "card.takeOut" : "card.inCup", PieceWords.of(piece)), out ? Face.CONDENSED_BOLD : Face.CONDENSED,
					out ? style.figure() : style.small(), style.tab());
		}
		key.work().map(CardWork::fullShims).filter(change -> !change.isEmpty())
				.ifPresent(change -> labelled(Messages.of("card.change"), Messages.of("card.changeFull", change)));
		if (!key.pieces().isEmpty()) {
			key.pieces().forEach(this::piece);
		} else if (key.work().isEmpty()) {
			blank(Messages.of("card.pieces"));
		} else if (key.work().get().isNothing()) {
			labelled(Messages.of("card.pieces"), Messages.of("none"));
		}
	}

	private void piece(PartialShim piece) {
		double side = style.figure() * 0.75;
		double top = column.y() + style.figure() * 0.13;
		column.add(new Drawn(new Rectangle(column.left() + style.tab() - side * 1.4, top, side, side),
				Style.of(FilmHatch.of(piece.thickness()).fill(1), Stroke.of(Ink.BLACK, 0.25))));
		if (piece == key.pieces().get(0)) {
			word(Messages.of("card.pieces"), style.figure());
		}
		column.line(PieceWords.of(piece), Face.CONDENSED_BOLD, style.figure(), style.tab());
	}

	private void level() {
		key.level().ifPresent(level -> {
			word(Messages.of("card.level"), style.text());
			column.line(level.now() + level.after().map(after -> " → " + after).orElse(""), Face.CONDENSED_BOLD,
					style.text(), style.tab());
			figures(Messages.of("card.gap", level.gap()), style.tab());
		});
	}

	private void notes() {
		key.notes().stream().limit(MOST_NOTES).forEach(this::note);
		if (key.notes().size() > MOST_NOTES) {
			note(CardNote.remark(Messages.of("card.more", key.notes().size() - MOST_NOTES)));
		}
	}

	private void note(CardNote note) {
		boolean warning = note.weight() == CardNote.Weight.WARNING;
		column.space(style.small() * 0.2);
		if (warning) {
			warningSign();
		}
		column.paragraph(note.text(), warning ? Face.CONDENSED_BOLD : Face.CONDENSED, style.small(),
				style.small() * 1.3, MOST_NOTE_LINES);
	}

	private void warningSign() {
		double side = style.small();
		Rectangle sign = new Rectangle(column.left(), column.y() + side * 0.05, side, side);
		column.add(new Drawn(sign, Style.filled(Ink.BLACK)));
		column.add(Text.of("!", column.left() + side / 2, column.baseline(side), Face.BOLD, side)
				.anchored(Anchor.MIDDLE).in(Ink.WHITE));
	}
}
