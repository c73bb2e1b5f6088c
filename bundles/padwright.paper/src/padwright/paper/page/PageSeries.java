package padwright.paper.page;

import java.util.ArrayList;
import java.util.List;

import padwright.drawing.scene.Scene;
import padwright.paper.words.Messages;

/** Lays parts out on as many pages as they take, each with its head and foot. */
public final class PageSeries {

	/** Around every page, mm. */
	private static final double MARGIN = 10;

	/** What stands at the foot of each page. */
	public interface Foot {

		/** @param page from 1 */
		Part of(int page, int pages);
	}

	private final PageHead head;
	private final Foot foot;
	private final PageFrame frame;

	public PageSeries(PaperSize paper, PageHead head, Foot foot) {
		this.head = head;
		this.foot = foot;
		this.frame = new PageFrame(paper, MARGIN, foot.of(1, 1).height());
	}

	/** Between the margins, mm. */
	public static double width(PaperSize paper) {
		return paper.width() - 2 * MARGIN;
	}

	/** Between head and foot of the first page, mm. */
	public double firstBodyHeight() {
		return frame.bodyHeight(head.first().height());
	}

	/** How many pages the parts take. */
	public int count(List<Part> parts) {
		return distribute(parts).size();
	}

	/**
	 * The pages.
	 *
	 * @param title of the document and each page
	 * @param parts one or more
	 * @param roomForNotes whether what is left of the last page gets lines to write on
	 */
	public List<Scene> pages(String title, List<Part> parts, boolean roomForNotes) {
		List<List<Part>> bodies = distribute(parts);
		List<Scene> scenes = new ArrayList<>();
		for (int page = 1; page <= bodies.size(); page++) {
			scenes.add(frame.compose(Messages.of("page.title", title, page), page == 1 ? head.first() : head.following(),
					bodies.get(page - 1), foot.of(page, bodies.size()), roomForNotes && page == bodies.size()));
		}
		return scenes;
	}

	private List<List<Part>> distribute(List<Part> parts) {
		return frame.distribute(parts, head.first().height(), head.following().height());
	}
}
