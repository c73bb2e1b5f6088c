package padwright.paper.film;

import java.util.List;

import padwright.paper.page.HeadText;

/**
 * What to cut for one plan.
 *
 * @param head of the pages
 * @param title of the document
 * @param groups thinnest film first
 * @param isOpen whether keys are not solved yet
 * @param leftOut why pieces of a key are not on the sheet, a sentence each
 * @param cautions for the film that is cut, a sentence each
 */
public record FilmSheet(HeadText head, String title, List<FilmGroup> groups, boolean isOpen, List<String> leftOut,
		List<String> cautions) {

	public FilmSheet {
		groups = List.copyOf(groups);
		leftOut = List.copyOf(leftOut);
		cautions = List.copyOf(cautions);
	}
}
