package padwright.language.start;

import java.util.Optional;

/** The text of a new key system. */
public final class SystemText {

	private SystemText() {
	}

	/**
	 * A document with one system, in millimetres.
	 *
	 * @param name must be a name without fault
	 * @param title shown to people; may be empty
	 * @param base name of the system that it is based on
	 * @throws IllegalArgumentException if the name has a fault
	 */
	public static String of(String name, String title, Optional<String> base) {
		return "unit mm\n\nsystem " + NameFault.require(name) + Titles.behind("", title)
				+ base.map(extended -> " based on " + NameFault.reference(extended)).orElse("") + " {\n"
				+ (base.isPresent() ? "" : "\tclock 12 at hinge\n") + "}\n";
	}
}
