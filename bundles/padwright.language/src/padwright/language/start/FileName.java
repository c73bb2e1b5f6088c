package padwright.language.start;

import java.util.Locale;

/** What the file of a new document is called. */
public final class FileName {

	private FileName() {
	}

	/** As in {@code spring-service.plan} for the plan SpringService. */
	public static String of(String name, String extension) {
		return name.replaceAll("(?<=[\\p{Ll}0-9])(?=\\p{Lu})", "-").replace('_', '-').toLowerCase(Locale.ROOT) + "."
				+ extension;
	}
}
