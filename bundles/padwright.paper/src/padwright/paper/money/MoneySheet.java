package padwright.paper.money;

import java.math.BigDecimal;
import java.util.List;

import padwright.paper.page.HeadText;

/**
 * An estimate or an invoice on paper.
 *
 * @param head of the pages
 * @param title of the document
 * @param currency of all amounts, or empty
 * @param before what is said above the amounts
 * @param blocks what it costs
 * @param after what is said below them
 */
public record MoneySheet(HeadText head, String title, String currency, List<Section> before, List<Block> blocks,
		List<Section> after) {

	/** Paragraphs under a heading. */
	public record Section(String heading, List<String> lines) {

		public Section {
			lines = List.copyOf(lines);
		}
	}

	/**
	 * Lines that are summed.
	 *
	 * @param heading or empty
	 */
	public record Block(String heading, List<Line> lines, List<Total> totals) {

		public Block {
			lines = List.copyOf(lines);
			totals = List.copyOf(totals);
		}
	}

	/** One line, its amount rounded as it is printed. */
	public record Line(String text, String count, BigDecimal each, BigDecimal amount) {
	}

	/**
	 * A sum.
	 *
	 * @param isFinal whether it is what is to be paid
	 */
	public record Total(String text, BigDecimal amount, boolean isFinal) {
	}

	public MoneySheet {
		before = List.copyOf(before);
		blocks = List.copyOf(blocks);
		after = List.copyOf(after);
	}
}
