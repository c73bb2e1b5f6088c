package padwright.paper.handback;

import java.util.List;

import padwright.paper.page.HeadText;

/**
 * What a player is told when an instrument goes home, in plain words.
 *
 * @param head of the page
 * @param title of the document
 * @param sections in reading order
 */
public record HandBack(HeadText head, String title, List<Section> sections) {

	/**
	 * Paragraphs under a heading.
	 *
	 * @param paragraphs one or more
	 */
	public record Section(String heading, List<String> paragraphs) {

		public Section {
			paragraphs = List.copyOf(paragraphs);
		}
	}

	public HandBack {
		sections = List.copyOf(sections);
	}
}
