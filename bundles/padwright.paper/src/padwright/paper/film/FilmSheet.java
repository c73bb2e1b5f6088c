package padwright.paper.film;

import java.util.List;

import padwright.paper.page.HeadText;

/**
 * What to cut for one plan.
 *
 * @param head of the pages
 * @param title of the document
 * @param groups thinnest film first
 * @param leftOut why pieces of a key are not on the sheet, a sentence each
 */
public record FilmSheet(HeadText head, String title, List<FilmGroup> groups, List<String> leftOut) {

	public FilmSheet {
		groups = List.copyOf(groups);
		leftOut = List.copyOf(leftOut);
	}
}
