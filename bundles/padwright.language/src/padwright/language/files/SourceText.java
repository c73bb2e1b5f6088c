package padwright.language.files;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;

/** Reads a document from disk, or says in plain words why it cannot. */
public final class SourceText {

	/** Largest file that is read, in bytes: some thousand times a usual plan. */
	public static final long LARGEST = 8L << 20;

	private SourceText() {
	}

	/**
	 * The text of a file in UTF-8.
	 *
	 * @throws UnreadableException if it cannot be read, is too large, or is no UTF-8 text
	 */
	public static String read(Path file) throws UnreadableException {
		return decode(bytes(file));
	}

	private static byte[] bytes(Path file) throws UnreadableException {
		try {
			if (!Files.isRegularFile(file)) {
				throw new UnreadableException(Files.exists(file) ? "is no file" : "does not exist");
			}
			if (Files.size(file) > LARGEST) {
				throw new UnreadableException("is larger than " + (LARGEST >> 20)
						+ " MiB, which no plan is; split it into several files");
			}
			return Files.readAllBytes(file);
		} catch (NoSuchFileException gone) {
			throw new UnreadableException("does not exist");
		} catch (IOException failed) {
			throw new UnreadableException("cannot be read; check its permissions and the disk");
		}
	}

	private static String decode(byte[] bytes) throws UnreadableException {
		try {
			String text = StandardCharsets.UTF_8.newDecoder().onMalformedInput(CodingErrorAction.REPORT)
					.onUnmappableCharacter(CodingErrorAction.REPORT).decode(ByteBuffer.wrap(bytes)).toString();
			if (text.indexOf('\0') >= 0) {
				throw new UnreadableException("is not a text file");
			}
			return text;
		} catch (CharacterCodingException notUtf8) {
			throw new UnreadableException("is not UTF-8 text; save it again with the encoding UTF-8");
		}
	}
}
