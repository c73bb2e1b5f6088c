package padwright.paper.card;

import java.util.ArrayList;
import java.util.List;

import padwright.drawing.font.DejaVuMetrics;
import padwright.drawing.scene.Scene;

/** Lays a bench card out on sheets of paper: two keys side by side, in the order of work. */
public final class BenchCardPages {

	private static final double MARGIN = 10;
	private static final int CELLS_IN_A_ROW = 2;
	/** Sizes of type to try, the usual one first. */
	private static final double[] SCALES = {1, 0.95, 0.9, 0.85};

	private final BenchCard card;
	private final PaperSize paper;
	private final Typesetter typesetter = new Typesetter(new DejaVuMetrics());

	public BenchCardPages(BenchCard card, PaperSize paper) {
		this.card = card;
		this.paper = paper;
	}

	/** The pages, in the usual size of type, or in a smaller one if that saves a page. */
	public List<Scene> pages() {
		Draft best = draft(SCALES[0]);
		for (int i = 1; i < SCALES.length; i++) {
			Draft denser = draft(SCALES[i]);
			best = denser.pages().size() < best.pages().size() ? denser : best;
		}
		return compose(best);
	}

	private Draft draft(double scale) {
		double width = paper.width() - 2 * MARGIN;
		CardStyle style = new CardStyle(typesetter, width / CELLS_IN_A_ROW, scale, card.twelveLooksAt());
		PageHead head = new PageHead(card, typesetter, width);
		PageFoot foot = new PageFoot(card, style, width);
		List<Part> parts = new ArrayList<>(rows(style));
		parts.addAll(new RegulationParts(typesetter, width).of(card.regulations()));
		PageFrame frame = new PageFrame(paper, MARGIN, foot.of(1, 1).height());
		return new Draft(frame, head, foot,
				frame.distribute(parts, head.first().height(), head.following().height()));
	}

	private List<Scene> compose(Draft draft) {
		int count = draft.pages().size();
		List<Scene> scenes = new ArrayList<>();
		for (int page = 1; page <= count; page++) {
			scenes.add(draft.frame().compose(title(page), page == 1 ? draft.head().first() : draft.head().following(),
					draft.pages().get(page - 1), draft.foot().of(page, count), page == count));
		}
		return scenes;
	}

	/** What goes on each page in one size of type. */
	private record Draft(PageFrame frame, PageHead head, PageFoot foot, List<List<Part>> pages) {
	}

	private String title(int page) {
		String serial = card.serial().isEmpty() ? "" : " " + card.serial();
		return card.title() + ", " + card.instrument() + serial + ", page " + page;
	}

	private List<Part> rows(CardStyle style) {
		List<KeyCell> cells = new ArrayList<>();
		for (CardKey key : card.keys()) {
			cells.add(KeyCell.of(style, key, cells.size() + 1));
		}
		List<Part> rows = new ArrayList<>();
		for (int first = 0; first < cells.size(); first += CELLS_IN_A_ROW) {
			rows.add(new CellRow(cells.subList(first, Math.min(first + CELLS_IN_A_ROW, cells.size())),
					style.cellWidth()));
		}
		return rows;
	}
}
