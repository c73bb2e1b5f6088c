package padwright.paper.page;

import java.util.ArrayList;
import java.util.List;

import padwright.drawing.scene.Element;
import padwright.drawing.scene.Group;
import padwright.drawing.scene.Scene;

/** Where things go on a sheet: head, body, foot. */
record PageFrame(PaperSize paper, double margin, double footHeight) {

	private static final double ABOVE_FOOT = 2;
	/** How much higher a row may be made to fill a page. */
	private static final double MOST_STRETCH = 8;

	/** The parts of each page, as many as fit under its head, at least one. */
	List<List<Part>> distribute(List<Part> parts, double firstHead, double followingHead) {
		List<List<Part>> pages = new ArrayList<>();
		double left = 0;
		for (Part part : parts) {
			if (pages.isEmpty() || part.height() > left) {
				left = bodyHeight(pages.isEmpty() ? firstHead : followingHead);
				pages.add(new ArrayList<>());
			}
			pages.get(pages.size() - 1).add(part);
			left -= part.height();
		}
		return pages;
	}

	/** What is left for the parts below a head of this height, mm. */
	double bodyHeight(double headHeight) {
		return paper.height() - 2 * margin - headHeight - footHeight - ABOVE_FOOT;
	}

	/** One page; its rows are stretched to fill it, or lines to write on do if there are to be notes. */
	Scene compose(String title, Part head, List<Part> body, Part foot, boolean notes) {
		List<Element> elements = new ArrayList<>();
		elements.add(place(head, head.height(), margin));
		double spare = bodyHeight(head.height()) - body.stream().mapToDouble(Part::height).sum();
		long rows = body.stream().filter(Part::stretches).count();
		double stretch = notes || rows == 0 ? 0 : Math.max(0, Math.min(MOST_STRETCH, spare / rows));
		double top = margin + head.height();
		for (Part part : body) {
			double height = part.height() + (part.stretches() ? stretch : 0);
			elements.add(place(part, height, top));
			top += height;
		}
		if (notes && spare > NoteLines.LEAST) {
			elements.add(Group.of(NoteLines.fill(paper.width() - 2 * margin, spare)).at(margin, top));
		}
		elements.add(place(foot, foot.height(), paper.height() - margin - foot.height()));
		return new Scene(title, paper.width(), paper.height(), elements);
	}

	private Element place(Part part, double height, double top) {
		return Group.of(part.draw(height)).at(margin, top);
	}
}
