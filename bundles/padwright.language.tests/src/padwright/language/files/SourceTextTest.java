package padwright.language.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SourceTextTest {

	@TempDir
	private Path folder;

	private Path file(byte[] content) throws IOException {
		return Files.write(folder.resolve("spring.plan"), content);
	}

	private static void assertUnreadable(Path file) {
		assertThrows(UnreadableException.class, () -> SourceText.read(file));
	}

	@Test
	void textIsReadAsItIs() throws IOException, UnreadableException {
		String text = "\uFEFFkey C♯ // für\r\n\t\n";
		assertEquals(text, SourceText.read(file(text.getBytes(StandardCharsets.UTF_8))));
		assertEquals("", SourceText.read(file(new byte[0])));
	}

	@Test
	void otherEncodingsAndBinariesAreRefused() throws IOException {
		assertUnreadable(file("für".getBytes(StandardCharsets.ISO_8859_1)));
		assertUnreadable(file("key".getBytes(StandardCharsets.UTF_16)));
		assertUnreadable(file("key".getBytes(StandardCharsets.UTF_16LE)));
		assertUnreadable(file(new byte[] { (byte) 0xED, (byte) 0xA0, (byte) 0x80 }));
		assertUnreadable(file(new byte[] { 'k', 0 }));
	}

	@Test
	void whatIsNoFileIsRefused() {
		assertUnreadable(folder);
		assertUnreadable(folder.resolve("missing"));
	}

	@Test
	void theLargestFileIsReadAndALargerOneRefused() throws IOException, UnreadableException {
		Path file = file(" ".repeat((int) SourceText.LARGEST).getBytes(StandardCharsets.UTF_8));
		assertEquals(SourceText.LARGEST, SourceText.read(file).length());
		try (RandomAccessFile longer = new RandomAccessFile(file.toFile(), "rw")) {
			longer.setLength(SourceText.LARGEST + 1);
		}
		assertUnreadable(file);
	}
}
