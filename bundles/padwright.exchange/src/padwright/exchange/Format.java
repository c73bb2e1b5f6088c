package padwright.exchange;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** What documents can be exchanged as. */
public enum Format {

	JSON, CSV, XMI;

	/** As the name of a file ends, without the dot. */
	public String extension() {
		return name().toLowerCase(Locale.ROOT);
	}

	/** The format of a file by its name. */
	public static Optional<Format> ofFile(String name) {
		String lower = name.toLowerCase(Locale.ROOT);
		return Arrays.stream(values()).filter(format -> lower.endsWith("." + format.extension())).findFirst();
	}
}
