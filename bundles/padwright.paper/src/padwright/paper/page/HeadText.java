package padwright.paper.page;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

import padwright.paper.words.Messages;
import padwright.workup.words.Days;

/**
 * What stands at the head of the pages of a document.
 *
 * @param heading the largest words: what the document is about
 * @param right beside it at the right edge; empty for nothing
 * @param subline below it
 * @param facts below that on the first page; empty for none
 * @param letterhead above all of it on the first page
 */
public record HeadText(String heading, String right, String subline, List<PageFact> facts, Letterhead letterhead) {

	public HeadText {
		facts = List.copyOf(facts);
	}

	/** A head without a letterhead. */
	public HeadText(String heading, String right, String subline, List<PageFact> facts) {
		this(heading, right, subline, facts, Letterhead.NONE);
	}

	/** This head below a letterhead. */
	public HeadText under(Letterhead shop) {
		return new HeadText(heading, right, subline, facts, shop);
	}

	/** The head of a document of one plan. */
	public static HeadText ofPlan(String title, String instrument, String serial, String planName,
			Optional<LocalDate> date, List<PageFact> facts) {
		return new HeadText(instrument, serial.isEmpty() ? "" : Messages.of("head.serial", serial),
				title + " · " + planName + date.map(day -> " · " + Days.of(day)).orElse(""), facts);
	}
}
