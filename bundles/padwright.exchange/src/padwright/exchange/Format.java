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

	/** The format with files of such an ending, without the dot. */
	public static Optional<Format> byName(String extension) {
		return Arrays.stream(values()).filter(format -> format.extension().equals(extension)).findFirst();
	}
}
