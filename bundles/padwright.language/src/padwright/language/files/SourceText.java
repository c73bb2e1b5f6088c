package padwright.language.files;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;

import padwright.language.messages.Messages;

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
				throw new UnreadableException(
						Files.exists(file) ? Messages.of("file.none") : Messages.of("file.missing"));
			}
			if (Files.size(file) > LARGEST) {
				throw new UnreadableException(Messages.of("file.large", LARGEST >> 20));
			}
			return Files.readAllBytes(file);
		} catch (NoSuchFileException gone) {
			throw new UnreadableException(Messages.of("file.missing"));
		} catch (IOException failed) {
			throw new UnreadableException(Messages.of("file.failed"));
		}
	}

	private static String decode(byte[] bytes) throws UnreadableException {
		try {
			String text = StandardCharsets.UTF_8.newDecoder().onMalformedInput(CodingErrorAction.REPORT)
					.onUnmappableCharacter(CodingErrorAction.REPORT).decode(ByteBuffer.wrap(bytes)).toString();
			if (text.indexOf('\0') >= 0) {
				throw new UnreadableException(Messages.of("file.notText"));
			}
			return text;
		} catch (CharacterCodingException notUtf8) {
			throw new UnreadableException(Messages.of("file.notUtf8"));
		}
	}
}
