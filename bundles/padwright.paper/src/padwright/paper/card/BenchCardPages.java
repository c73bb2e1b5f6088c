package padwright.paper.card;

import java.util.ArrayList;
import java.util.List;

import padwright.drawing.font.DejaVuMetrics;
import padwright.drawing.scene.Scene;
import padwright.paper.page.HeadText;
import padwright.paper.page.PageHead;
import padwright.paper.page.PageSeries;
import padwright.paper.page.PaperSize;
import padwright.paper.page.Part;
import padwright.paper.page.Typesetter;

/** Lays a bench card out on sheets of paper: two keys side by side, in the order of work. */
public final class BenchCardPages {

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
			best = denser.count() < best.count() ? denser : best;
		}
		return best.series().pages(title(), best.parts(), true);
	}

	private Draft draft(double scale) {
		double width = PageSeries.width(paper);
		CardStyle style = new CardStyle(typesetter, width / CELLS_IN_A_ROW, scale, card.twelveLooksAt());
		PageFoot foot = new PageFoot(card, style, width);
		List<Part> parts = new ArrayList<>(rows(style));
		parts.addAll(new RegulationParts(typesetter, width).of(card.regulations()));
		parts.addAll(new DiaryParts(typesetter, width).of(card.diary()));
		return new Draft(new PageSeries(paper, new PageHead(head(), typesetter, width), foot::of), parts);
	}

	private HeadText head() {
		return HeadText.ofPlan(card.title(), card.instrument(), card.serial(), card.planName(), card.date(),
				card.facts());
	}

	/** What goes on the pages in one size of type. */
	private record Draft(PageSeries series, List<Part> parts) {

		int count() {
			return series.count(parts);
		}
	}

	private String title() {
		String serial = card.serial().isEmpty() ? "" : " " + card.serial();
		return card.title() + ", " + card.instrument() + serial;
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
