package padwright.language.archive;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;
import java.util.HexFormat;

/** Short names for contents: equal for equal ones, and for no others that anybody will ever meet. */
final class Fingerprint {

	private static final int BYTES = 16;

	private Fingerprint() {
	}

	static String of(byte[] content) {
		try {
			return HexFormat.of().formatHex(
					Arrays.copyOf(MessageDigest.getInstance("SHA-256").digest(content), BYTES));
		} catch (NoSuchAlgorithmException everyJavaHasIt) {
			throw new IllegalStateException(everyJavaHasIt);
		}
	}

	static String of(Iterable<String> parts) {
		return of(String.join("\0", parts).getBytes(StandardCharsets.UTF_8));
	}
}
