package padwright.views.board;

import java.util.ArrayList;
import java.util.List;

import padwright.drawing.font.DejaVuMetrics;
import padwright.drawing.scene.Drawn;
import padwright.drawing.scene.Element;
import padwright.drawing.scene.Face;
import padwright.drawing.scene.Group;
import padwright.drawing.scene.Ink;
import padwright.drawing.scene.Rectangle;
import padwright.drawing.scene.Scene;
import padwright.drawing.scene.Style;
import padwright.drawing.scene.Text;
import padwright.paper.page.Typesetter;
import padwright.views.Messages;
import padwright.views.Palette;

/** Draws the board: a lane beside the other, in each a card for each instrument, the one promised first on top. */
public final class BoardScene {

	private static final double LANE = 52;
	private static final double GAP = 4;
	private static final double PAD = 2;
	private static final double HEADING = 3.8;
	private static final double NAME = 3.4;
	private static final double TEXT = 3;
	private static final double LEADING = 1.25;
	private static final double EDGE = 1.2;
	/** So that a board with few lanes is not drawn huge. */
	private static final double LEAST_WIDTH = 3 * (LANE + GAP);

	private final BoardState state;
	private final Palette palette;
	private final Typesetter typesetter = new Typesetter(new DejaVuMetrics());

	private BoardScene(BoardState state, Palette palette) {
		this.state = state;
		this.palette = palette;
	}

	/** @param aspect width of the window over its height */
	public static Scene draw(BoardState state, Palette palette, double aspect) {
		return new BoardScene(state, palette).scene(aspect);
	}

	private Scene scene(double aspect) {
		String title = Messages.of("board.title", state.today());
		if (state.lanes().isEmpty()) {
			Text nothing = Text.centred(Messages.of("board.empty"), 60, 60 / aspect, Face.REGULAR, 4).in(palette.quiet());
			return new Scene(title, 120, 120 / aspect, List.of(nothing));
		}
		List<Element> elements = new ArrayList<>();
		double left = GAP;
		double bottom = 0;
		for (BoardLane lane : state.lanes()) {
			bottom = Math.max(bottom, lane(lane, left, elements));
			left += LANE + GAP;
		}
		double width = Math.max(left, LEAST_WIDTH);
		double height = Math.max(bottom + GAP, width / aspect);
		return new Scene(title, Math.max(width, height * aspect), height, elements);
	}

	/** Draws a lane and tells where it ends. */
	private double lane(BoardLane lane, double left, List<Element> elements) {
		String heading = Messages.of("board.count", lane.heading(), lane.cards().size());
		double top = GAP;
		for (String line : typesetter.wrap(heading, Face.CONDENSED_BOLD, HEADING, LANE)) {
			top += HEADING * LEADING;
			elements.add(Text.of(line, left, top - HEADING * 0.3, Face.CONDENSED_BOLD, HEADING).in(palette.ink()));
		}
		top += 1;
		for (BoardCard card : lane.cards()) {
			top += card(lane, card, left, top, elements) + GAP / 2;
		}
		return top;
	}

	private double card(BoardLane lane, BoardCard card, double left, double top, List<Element> elements) {
		List<Text> lines = new ArrayList<>();
		double inner = LANE - 2 * PAD - EDGE;
		double y = add(card.instrument(), Face.CONDENSED_BOLD, NAME, palette.ink(), inner, PAD, lines);
		y = add(BoardWords.stage(card), Face.CONDENSED, TEXT, palette.quiet(), inner, y, lines);
		y = add(BoardWords.due(card), Face.CONDENSED_BOLD, TEXT, card.late() ? palette.error() : palette.quiet(), inner, y, lines);
		for (int step = 0; step < card.steps().size(); step++) {
			y = add("– " + BoardWords.step(card.steps().get(step), state.today()), Face.CONDENSED, TEXT, palette.ink(), inner,
					y + 0.6, lines);
		}
		double height = y + PAD;
		List<Element> drawn = new ArrayList<>();
		drawn.add(new Drawn(new Rectangle(0, 0, LANE, height), Style.filled(palette.tint(palette.ink(), 0.06))));
		drawn.add(new Drawn(new Rectangle(0, 0, EDGE, height), Style.filled(colour(lane))));
		drawn.addAll(lines);
		elements.add(Group.named(card.id(), BoardWords.spoken(lane, card, state.today()), drawn).at(left, top));
		return height;
	}

	/** Adds words line by line and tells where they end. */
	private double add(String words, Face face, double size, Ink ink, double width, double top, List<Text> lines) {
		double y = top;
		for (String line : typesetter.wrap(words, face, size, width)) {
			lines.add(Text.of(line, PAD + EDGE, y + size, face, size).in(ink));
			y += size * LEADING;
		}
		return y;
	}

	private Ink colour(BoardLane lane) {
		return switch (lane.kind()) {
		case AGREE, WAIT -> palette.warning();
		case MORNING -> palette.proposal();
		case WORK -> palette.read();
		case DELIVER -> palette.done();
		case SECOND_LOOK -> palette.solved();
		};
	}
}
