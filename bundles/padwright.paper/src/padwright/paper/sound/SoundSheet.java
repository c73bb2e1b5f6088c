package padwright.paper.sound;

import java.util.List;

import padwright.paper.page.HeadText;

/**
 * What the picture of a scale shows.
 *
 * @param title of the document
 * @param marks one at least, each with cents
 */
public record SoundSheet(HeadText head, String title, List<SoundMark> marks) {

	/** @throws IllegalArgumentException if there is nothing to show */
	public SoundSheet {
		marks = marks.stream().filter(mark -> mark.cents().isPresent()).toList();
		if (marks.isEmpty()) {
			throw new IllegalArgumentException("no note has a resonance near its pitch");
		}
	}
}
