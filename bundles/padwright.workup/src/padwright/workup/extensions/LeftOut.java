package padwright.workup.extensions;

import java.nio.file.Path;

import padwright.workup.words.Phrase;

/**
 * An extension that is not used.
 *
 * @param jar its file
 * @param why it is not, as Java says it
 */
public record LeftOut(Path jar, String why) {

	/** What it is, why and what to do about it. */
	public String inWords() {
		return Phrase.of("extensions.leftOut", jar.getFileName(), why, jar.toAbsolutePath().getParent()).words();
	}
}
